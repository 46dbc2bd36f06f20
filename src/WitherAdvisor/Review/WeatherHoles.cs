using WitherAdvisor.Readings.Hourly;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Review;

/// <summary>Finds the stretches that nobody read.</summary>
public static class WeatherHoles
{
    /// <summary>Between two times, by quantity and then by time; after <paramref name="now"/> only what nobody forecast either.</summary>
    public static IReadOnlyList<WeatherHole> Between(
        DateTimeOffset from, DateTimeOffset to, DateTimeOffset now,
        ComposedWeather weather, Site site)
    {
        KnownHours hours = KnownHours.On(HourGrid.Around(from, to), weather, site);
        return In(hours, 1, hours.Grid.Hours, now);
    }

    /// <summary>Among the hours from one instant to another.</summary>
    internal static List<WeatherHole> In(KnownHours hours, int first, int last, DateTimeOffset now)
    {
        var holes = new List<WeatherHole>();
        foreach (WeatherQuantity quantity in Enum.GetValues<WeatherQuantity>())
        {
            for (int hour = first; hour <= last;)
            {
                int start = hour;
                ValueStanding? instead = Instead(hours, quantity, start, now);
                for (hour++; hour <= last && Instead(hours, quantity, hour, now) == instead; hour++)
                {
                }

                if (instead is ValueStanding standing)
                {
                    holes.Add(new(quantity, hours.Grid.InstantOf(start - 1), hours.Grid.InstantOf(hour - 1), standing));
                }
            }
        }

        return holes;
    }

    /// <summary>Null where it is no hole.</summary>
    private static ValueStanding? Instead(KnownHours hours, WeatherQuantity quantity, int hour, DateTimeOffset now)
    {
        ValueStanding standing = hours.Of(quantity, hour);
        bool isHole = standing == ValueStanding.Unknown
            || (standing == ValueStanding.Forecast && hours.Grid.InstantOf(hour) <= now);
        return isHole ? standing : null;
    }
}

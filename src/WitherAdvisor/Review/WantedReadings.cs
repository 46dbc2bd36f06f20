using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Review;

/// <summary>Which readings would help most, at most two: the air by its two bulbs and rain come first, as they tell most of the leaf.</summary>
internal static class WantedReadings
{
    private const int Most = 2;
    private const int HoursInDay = 24;

    /// <summary>Wind of the last day is worth asking for when it is missing for half of it.</summary>
    private const int FewWindH = HoursInDay / 2;

    /// <summary>The first two of them.</summary>
    /// <param name="last">The last instant that has come.</param>
    public static IReadOnlyList<WantedReading> Of(KnownHours hours, int last) => [.. All(hours, last).Take(Most)];

    private static IEnumerable<WantedReading> All(KnownHours hours, int last)
    {
        if (Unread(hours.Air, last, (int)StaleWeather.OldH) == (int)StaleWeather.OldH)
        {
            yield return new(WantedKind.Bulbs);
        }

        if (Unread(hours.Rain, last, HoursInDay) > 0)
        {
            yield return new(WantedKind.Rain, hours.Grid.InstantOf(LastKnownRain(hours, last)));
        }

        if (Unread(hour => hours.Of(WeatherQuantity.Wind, hour), last, HoursInDay) >= FewWindH)
        {
            yield return new(WantedKind.Wind);
        }
    }

    private static int Unread(Func<int, ValueStanding> standing, int last, int hours)
    {
        int unread = 0;
        for (int hour = Math.Max(last - hours, 0) + 1; hour <= last; hour++)
        {
            unread += standing(hour) is ValueStanding.Forecast or ValueStanding.Unknown ? 1 : 0;
        }

        return unread;
    }

    /// <summary>Up to there a gauge would be read for: before the first unread hour of the last day, and of the stretch before it.</summary>
    private static int LastKnownRain(KnownHours hours, int last)
    {
        int hour = Math.Max(last - HoursInDay, 0) + 1;
        while (hours.Rain(hour) is not (ValueStanding.Forecast or ValueStanding.Unknown))
        {
            hour++;
        }

        while (hour > 1 && hours.Rain(hour - 1) is ValueStanding.Forecast or ValueStanding.Unknown)
        {
            hour--;
        }

        return hour - 1;
    }
}

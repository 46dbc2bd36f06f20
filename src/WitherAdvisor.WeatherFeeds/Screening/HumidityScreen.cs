using WitherAdvisor.Readings;

namespace WitherAdvisor.WeatherFeeds.Screening;

/// <summary>
/// Leaves an hour its better humidity. A feed gives relative humidity in whole percent, which at 98 % is a quarter of the
/// wet-bulb depression, and dew point to 0.1 K: the dew point wins where it can be believed.
/// </summary>
internal static class HumidityScreen
{
    /// <summary>Dew point and dry bulb are rounded apart, and by models interpolated apart.</summary>
    private const double MostOverDryBulbK = 0.5;

    public static WeatherReading Of(WeatherReading hour, NoteBook notes)
    {
        if (DewPointC(hour, notes) is double dewPointC)
        {
            return hour with { DewPointC = dewPointC, RelativeHumidity = null };
        }

        return hour with { DewPointC = null, RelativeHumidity = RelativeHumidity(hour, notes) };
    }

    private static double? DewPointC(WeatherReading hour, NoteBook notes)
    {
        double overK = (hour.DewPointC - hour.DryBulbC) ?? 0;
        if (overK <= 0)
        {
            return hour.DewPointC;
        }

        bool rounding = overK <= MostOverDryBulbK;
        notes.Count(rounding
            ? new FeedNote.ClampedDewPoint(1, hour.Time)
            : new FeedNote.RefusedDewPoint(MostOverDryBulbK, 1, hour.Time));
        return rounding ? hour.DryBulbC : null;
    }

    private static double? RelativeHumidity(WeatherReading hour, NoteBook notes)
    {
        if (hour.RelativeHumidity is null or <= 1)
        {
            return hour.RelativeHumidity;
        }

        notes.Count(new FeedNote.ClampedHumidity(1, hour.Time));
        return 1;
    }
}

using WitherAdvisor.Readings;

namespace WitherAdvisor.WeatherFeeds.Screening;

/// <summary>Brings rows into the order of time, one an hour.</summary>
internal static class HourOrder
{
    public static List<WeatherReading> Of(IReadOnlyList<WeatherReading> rows, NoteBook notes)
    {
        if (rows.Zip(rows.Skip(1)).Any(pair => pair.First.Time > pair.Second.Time))
        {
            notes.Say(new FeedNote.UnsortedHours());
        }

        return [.. rows.GroupBy(row => row.Time).OrderBy(hour => hour.Key).Select(hour => One([.. hour], notes))];
    }

    private static WeatherReading One(List<WeatherReading> rows, NoteBook notes)
    {
        if (rows.Count == 1)
        {
            return rows[0];
        }

        notes.Count(new FeedNote.RepeatedHours(1, rows[0].Time));
        return new(
            rows[0].Time,
            DryBulbC: Agreed(rows, row => row.DryBulbC, HourlyVariable.DryBulbC, notes),
            DewPointC: Agreed(rows, row => row.DewPointC, HourlyVariable.DewPointC, notes),
            RelativeHumidity: Agreed(rows, row => row.RelativeHumidity, HourlyVariable.RelativeHumidity, notes),
            RainMm: Agreed(rows, row => row.RainMm, HourlyVariable.RainMm, notes),
            WindMPerS: Agreed(rows, row => row.WindMPerS, HourlyVariable.WindMPerS, notes),
            StationPressurePa: Agreed(rows, row => row.StationPressurePa, HourlyVariable.StationPressurePa, notes),
            ShortwaveWPerM2: Agreed(rows, row => row.ShortwaveWPerM2, HourlyVariable.ShortwaveWPerM2, notes));
    }

    // Nothing tells which of two different values is right, so neither is.
    private static double? Agreed(
        List<WeatherReading> rows, Func<WeatherReading, double?> value, HourlyVariable variable, NoteBook notes)
    {
        List<double?> known = [.. rows.Select(value).Where(some => some is not null).Distinct()];
        if (known.Count > 1)
        {
            notes.Count(new FeedNote.ContradictingHours(variable.Name, 1, rows[0].Time));
        }

        return known.Count == 1 ? known[0] : null;
    }
}

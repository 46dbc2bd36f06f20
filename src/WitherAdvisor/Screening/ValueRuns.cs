using WitherAdvisor.Readings;

namespace WitherAdvisor.Screening;

/// <summary>Stretches of readings that tell the same of one value; readings that tell nothing of it neither join nor end one.</summary>
internal static class ValueRuns
{
    /// <summary>Each stretch of two readings or more, by time.</summary>
    /// <param name="longestGapH">A hole longer than this ends a stretch.</param>
    public static IEnumerable<IReadOnlyList<WeatherReading>> Of(
        IReadOnlyList<WeatherReading> readings, Func<WeatherReading, double?> value, double longestGapH)
    {
        var run = new List<WeatherReading>();
        double? held = null;
        foreach (WeatherReading reading in readings)
        {
            if (value(reading) is not { } told)
            {
                continue;
            }

            bool goesOn = run.Count > 0 && told == held && (reading.Time - run[^1].Time).TotalHours <= longestGapH;
            if (!goesOn && run.Count > 1)
            {
                yield return run;
            }

            run = goesOn ? run : [];
            run.Add(reading);
            held = told;
        }

        if (run.Count > 1)
        {
            yield return run;
        }
    }

    /// <summary>Hours from the first reading of a stretch to its last.</summary>
    public static double Hours(IReadOnlyList<WeatherReading> run) => (run[^1].Time - run[0].Time).TotalHours;
}

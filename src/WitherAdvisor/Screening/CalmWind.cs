using WitherAdvisor.Readings;

namespace WitherAdvisor.Screening;

/// <summary>Wind that is 0 for days: a cup that stands, a column that nobody fills.</summary>
internal static class CalmWind
{
    /// <summary>Hours (from memory: calm nights are common, days without any breeze are not).</summary>
    public const double LeastH = 72;

    private const double LongestGapH = 6;
    private const int LeastReadings = 24;

    public static IEnumerable<WeatherFinding> In(WeatherToScreen weather) =>
        from run in ValueRuns.Of(weather.Readings, reading => reading.WindMPerS, LongestGapH)
        where run[0].WindMPerS == 0 && ValueRuns.Hours(run) >= LeastH && run.Count >= LeastReadings
        select new WeatherFinding(
            new Assumption.WindAlwaysCalm(ValueRuns.Hours(run)), run[0].Time, run[^1].Time, reading => reading.WindMPerS == 0, WeatherFinding.WithoutWind);
}

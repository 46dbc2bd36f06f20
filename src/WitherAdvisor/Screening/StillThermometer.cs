using WitherAdvisor.Readings;

namespace WitherAdvisor.Screening;

/// <summary>A dry bulb that does not move for more than a day: sun and night move it everywhere.</summary>
internal static class StillThermometer
{
    /// <summary>Hours (derived: the longest of three airports over a year was 13, read to a degree Fahrenheit; fixtures/airports).</summary>
    public const double LeastH = 30;

    private const double LongestGapH = 3;
    private const int LeastReadings = 12;

    public static IEnumerable<WeatherFinding> In(WeatherToScreen weather) =>
        from run in ValueRuns.Of(weather.Readings, reading => reading.DryBulbC, LongestGapH)
        where ValueRuns.Hours(run) >= LeastH && run.Count >= LeastReadings
        select new WeatherFinding(
            new Assumption.ThermometerStill(run[0].DryBulbC!.Value, ValueRuns.Hours(run)),
            run[0].Time, run[^1].Time, reading => reading.DryBulbC is not null, WeatherFinding.WithoutDryBulb);
}

using WitherAdvisor.Readings;

namespace WitherAdvisor.Screening;

/// <summary>A relative humidity that does not move while the air warms and cools: that takes water from nowhere.</summary>
internal static class StillHumidity
{
    /// <summary>Hours (derived: the longest of three airports over a year was 12; fixtures/airports).</summary>
    public const double LeastH = 30;

    /// <summary>Range of temperature meanwhile, K: rain and fog keep air saturated, and its temperature steadier than this (from memory).</summary>
    public const double LeastRangeK = 4;

    private const double LongestGapH = 3;
    private const int LeastReadings = 15;
    private const double Thousandths = 1000;

    public static IEnumerable<WeatherFinding> In(WeatherToScreen weather)
    {
        foreach (IReadOnlyList<WeatherReading> run in ValueRuns.Of(weather.Readings, reading => Rounded(weather.RelativeHumidity(reading)), LongestGapH))
        {
            double rangeK = run.Max(reading => reading.DryBulbC!.Value) - run.Min(reading => reading.DryBulbC!.Value);
            if (ValueRuns.Hours(run) >= LeastH && run.Count >= LeastReadings && rangeK >= LeastRangeK)
            {
                yield return new(
                    new Assumption.HumidityStill(weather.RelativeHumidity(run[0])!.Value, ValueRuns.Hours(run), rangeK),
                    run[0].Time, run[^1].Time, reading => reading.HasHumidity, WeatherFinding.WithoutHumidity);
            }
        }
    }

    private static double? Rounded(double? share) => share is { } known ? Math.Round(known * Thousandths) : null;
}

using WitherAdvisor.Readings;

namespace WitherAdvisor.Screening;

/// <summary>A gauge that tells the same rain reading after reading: a switch that chatters, a total sent again and again.</summary>
internal static class RepeatingGauge
{
    /// <summary>Readings of the same rain in a row (derived: the most of three airports over a year was 4; fixtures/airports).</summary>
    public const int LeastReadings = 12;

    /// <summary>The same where it rains little: a feed may spread a day's drizzle evenly over its hours.</summary>
    public const int LeastReadingsOfLittle = 36;

    /// <summary>mm in an hour.</summary>
    public const double LittleMmPerH = 1;

    private const double LongestGapH = 7;

    public static IEnumerable<WeatherFinding> In(WeatherToScreen weather) =>
        from run in ValueRuns.Of(weather.Readings, reading => reading.RainMm, LongestGapH)
        let rainMm = run[0].RainMm!.Value
        where rainMm > 0 && run.Count >= (rainMm >= LittleMmPerH * WeatherToScreen.RainH(run[0]) ? LeastReadings : LeastReadingsOfLittle)
        select new WeatherFinding(
            new Assumption.GaugeRepeats(rainMm, run.Count), run[0].Time, run[^1].Time, reading => reading.RainMm == rainMm, WeatherFinding.WithoutRain);
}

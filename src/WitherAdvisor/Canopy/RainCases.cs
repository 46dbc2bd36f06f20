using WitherAdvisor.Readings.Hourly;

namespace WitherAdvisor.Canopy;

/// <summary>Rain as it may have fallen, mm by the hour, where the readings leave it open.</summary>
/// <param name="Best">What was read, totals spread evenly, unknown hours without rain.</param>
/// <param name="Early">Totals as early as they can have fallen.</param>
/// <param name="Late">Totals as late as they can have fallen.</param>
/// <param name="Wet">As <paramref name="Best"/>, with rain in the unknown hours too.</param>
internal sealed record RainCases(double[] Best, double[] Early, double[] Late, double[] Wet)
{
    /// <summary>Rain put into an unknown hour to see what it would do, mm (from memory: a steady light rain).</summary>
    private const double LightRainMmPerH = 0.5;

    public static RainCases Of(HourlyRain rain)
    {
        int length = rain.Known.Length;
        var cases = new RainCases(new double[length], new double[length], new double[length], new double[length]);
        for (int hour = 1; hour < length; hour++)
        {
            double read = rain.ObservedMm[hour];
            double stated = rain.StatedMm[hour];
            double early = rain.StatedEarlyMm[hour];
            cases.Best[hour] = read + stated;
            cases.Early[hour] = read + early;
            cases.Late[hour] = read + Math.Max(2 * stated - early, 0);
            cases.Wet[hour] = read + stated + (1 - rain.Known[hour]) * LightRainMmPerH;
        }

        return cases;
    }
}

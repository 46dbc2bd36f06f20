using WitherAdvisor.Readings;

namespace WitherAdvisor.Screening;

/// <summary>More rain in an hour than falls where tea grows.</summary>
internal static class HeavyRain
{
    /// <summary>mm in an hour or less (from memory: an hour of a hundred years in the wet tropics brings 100 to 130).</summary>
    public const double MostMmInHour = 150;

    public static IEnumerable<WeatherFinding> In(WeatherToScreen weather)
    {
        List<WeatherReading> heavy = [.. weather.Readings.Where(IsTooHeavy)];
        if (heavy.Count > 0)
        {
            yield return new(
                new Assumption.RainTooHeavy(heavy.Max(reading => reading.RainMm!.Value), MostMmInHour, heavy.Count),
                heavy[0].Time, heavy[^1].Time, IsTooHeavy, WeatherFinding.WithoutRain);
        }
    }

    private static bool IsTooHeavy(WeatherReading reading) => reading.RainMm > MostMmInHour * Math.Max(WeatherToScreen.RainH(reading), 1);
}

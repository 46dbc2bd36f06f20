using WitherAdvisor.Readings;

namespace WitherAdvisor.Screening;

/// <summary>A gauge that reads nothing for weeks in which the air is near saturation at midday: a funnel that is blocked.</summary>
/// <remarks>Nights are humid in every drought; middays are where it rains. Common practice, no published source.</remarks>
internal static class DryGauge
{
    /// <summary>Days without rain.</summary>
    public const double LeastDays = 21;

    /// <summary>Mean relative humidity about midday that tells of rain or drizzle (from memory).</summary>
    public const double HumidAtMidday = 0.90;

    public const int LeastHumidDays = 5;
    public const double LeastHumidShare = 0.2;

    private const double LongestGapH = 48;
    private const double MiddayFromH = 10;
    private const double MiddayToH = 15;
    private const int LeastReadingsOfMidday = 2;

    public static IEnumerable<WeatherFinding> In(WeatherToScreen weather)
    {
        foreach (IReadOnlyList<WeatherReading> run in ValueRuns.Of(weather.Readings, reading => reading.RainMm, LongestGapH))
        {
            double days = ValueRuns.Hours(run) / 24;
            if (run[0].RainMm == 0 && days >= LeastDays && HumidDays(weather, run[0].Time, run[^1].Time) is var humid
                && humid >= LeastHumidDays && humid >= LeastHumidShare * days)
            {
                yield return new(
                    new Assumption.GaugeDry((int)Math.Round(days), humid), run[0].Time, run[^1].Time,
                    reading => reading.RainMm == 0, WeatherFinding.WithoutRain);
            }
        }
    }

    private static int HumidDays(WeatherToScreen weather, DateTimeOffset from, DateTimeOffset to) => weather.Readings
        .Where(reading => reading.Time >= from && reading.Time <= to && weather.SolarHour(reading.Time) is >= MiddayFromH and <= MiddayToH)
        .Select(reading => (Day: weather.SolarDayNumber(reading.Time), Humidity: weather.RelativeHumidity(reading)))
        .Where(reading => reading.Humidity is not null)
        .GroupBy(reading => reading.Day)
        .Count(day => day.Count() >= LeastReadingsOfMidday && day.Average(reading => reading.Humidity) >= HumidAtMidday);
}

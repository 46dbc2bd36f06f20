using WitherAdvisor.Readings;

namespace WitherAdvisor.Screening;

/// <summary>Inches in a column of millimetres: days on which it rains for hours and hardly anything falls.</summary>
/// <remarks>
/// A day with six hours of rain or more brought 13 to 16 mm (median) at three airports over a year and never under 2 mm; in inches that
/// reads 0.6 (fixtures/airports).
/// </remarks>
internal static class RainInInches
{
    /// <summary>Hours with rain that make a rainy day.</summary>
    public const int LeastRainyHours = 6;

    public const int LeastRainyDays = 4;

    /// <summary>Median of rainy days below which they read like inches, mm.</summary>
    public const double LeastMedianMm = 1.2;

    /// <summary>An hour's rain that no inches reach, mm.</summary>
    public const double MostMmInHour = 2.5;

    public static IEnumerable<WeatherFinding> In(WeatherToScreen weather)
    {
        List<WeatherReading> told = [.. weather.Readings.Where(reading => reading.RainMm > 0)];
        if (told.Count == 0 || told.Exists(reading => reading.RainMm > MostMmInHour))
        {
            yield break;
        }

        List<double> rainyDays =
        [
            .. told.GroupBy(reading => weather.SolarDayNumber(reading.Time))
                .Where(day => day.Sum(WeatherToScreen.RainH) >= LeastRainyHours)
                .Select(day => day.Sum(reading => reading.RainMm!.Value)).Order(),
        ];
        if (rainyDays.Count >= LeastRainyDays && rainyDays[rainyDays.Count / 2] is var medianMm && medianMm < LeastMedianMm)
        {
            yield return new(
                new Assumption.RainLikeInches(rainyDays.Count, medianMm),
                weather.Readings[0].Time, weather.Readings[^1].Time, reading => reading.RainMm is not null, WeatherFinding.WithoutRain);
        }
    }
}

using WitherAdvisor.Readings;

namespace WitherAdvisor.Tests.Advice;

/// <summary>Weather invented for a test, hour by hour: the same day again and again, but for its rain.</summary>
/// <param name="MeanC">Mean dry bulb of the day, °C.</param>
/// <param name="SwingK">Warmest hour (two in the afternoon) above that mean, K.</param>
/// <param name="DewPointC">°C.</param>
/// <param name="WindMPerS">At 10 m, m/s.</param>
/// <param name="RainMm">Rain of the hour before, mm, by whole days before loading (0 on the day itself) and the hour of the day.</param>
internal sealed record InventedWeather(
    double MeanC, double SwingK, double DewPointC, double WindMPerS, Func<int, int, double> RainMm)
{
    private const int HourOfWarmth = 14;
    private const int HoursInDay = 24;

    /// <summary>So many days of readings up to a time.</summary>
    public List<WeatherReading> Before(DateTimeOffset loadedAt, int days) =>
        [.. Enumerable.Range(-days * HoursInDay, days * HoursInDay + 1).Select(hour => At(loadedAt, hour))];

    /// <summary>So many hours after a time.</summary>
    public List<WeatherReading> After(DateTimeOffset loadedAt, int hours) =>
        [.. Enumerable.Range(1, hours).Select(hour => At(loadedAt, hour))];

    private WeatherReading At(DateTimeOffset loadedAt, int hour)
    {
        DateTimeOffset time = loadedAt.AddHours(hour);
        double dryBulbC = MeanC + SwingK * Math.Cos(2 * Math.PI * (time.Hour - HourOfWarmth) / HoursInDay);
        int daysBefore = (int)(loadedAt.Date - time.Date).TotalDays;
        return new(
            time,
            DryBulbC: dryBulbC,
            DewPointC: Math.Min(DewPointC, dryBulbC),
            RainMm: hour > 0 ? 0 : RainMm(daysBefore, time.Hour),
            WindMPerS: WindMPerS);
    }
}

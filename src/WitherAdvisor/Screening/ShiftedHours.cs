using WitherAdvisor.Readings;

namespace WitherAdvisor.Screening;

/// <summary>Hours that bear the times of others: radiation at midnight, or a day whose warmest hour is in the night.</summary>
internal static class ShiftedHours
{
    /// <summary>Hours off before it is said: clouds and sea breezes move noon and the warmest hour by less (derived: three airports over a year, fixtures/airports).</summary>
    public const double LeastBySunH = 2.5;
    public const double LeastByTemperatureH = 3;

    /// <summary>Solar hour that a day's first harmonic of temperature is highest at (derived: half past twelve by the sea to four inland, over a year of three airports; fixtures/airports).</summary>
    public const double WarmestH = 14;

    /// <summary>Mean swing of that harmonic, K, without which the sun did not make the days.</summary>
    public const double LeastSwingK = 1.5;

    private const double LeastCoherence = 0.5;
    private const int LeastDaysOfSun = 3;
    private const int LeastDaysOfTemperature = 14;
    private const int LeastReadingsOfDay = 12;
    private const double LeastSunOfDayWPerM2 = 500;
    private const double HoursInDay = 24;

    public static IEnumerable<WeatherFinding> In(WeatherToScreen weather)
    {
        if (BySun(weather) is { } noonH)
        {
            return Found(weather, noonH, LeastBySunH, bySun: true);
        }

        return ByTemperature(weather) is { } warmestH ? Found(weather, warmestH, LeastByTemperatureH, bySun: false) : [];
    }

    private static IEnumerable<WeatherFinding> Found(WeatherToScreen weather, double lateH, double leastH, bool bySun) => Math.Abs(lateH) < leastH
        ? []
        : [new(new Assumption.HoursShifted(lateH, bySun), weather.Readings[0].Time, weather.Readings[^1].Time, _ => false, reading => reading)];

    /// <summary>Hours by which the middle of the radiation is later than solar noon; null where too little of it is known.</summary>
    private static double? BySun(WeatherToScreen weather)
    {
        // Radiation is of the hour before its reading: half an hour earlier in the mean.
        List<Harmonic> days =
        [
            .. weather.Readings.Where(reading => reading.ShortwaveWPerM2 is not null)
                .GroupBy(reading => weather.SolarDayNumber(reading.Time))
                .Where(day => day.Count() >= LeastReadingsOfDay && day.Sum(reading => reading.ShortwaveWPerM2!.Value) >= LeastSunOfDayWPerM2)
                .Select(day => Harmonic.Of(day.Select(reading => (weather.SolarHour(reading.Time) - 0.5, reading.ShortwaveWPerM2!.Value)))),
        ];
        return days.Count < LeastDaysOfSun ? null : Late(Harmonic.Mean(days).PeakH, HoursInDay / 2);
    }

    /// <summary>Hours by which the warmest hour is later than it should be; null where the days have no course of their own.</summary>
    private static double? ByTemperature(WeatherToScreen weather)
    {
        List<Harmonic> days =
        [
            .. weather.Readings.Where(reading => reading.DryBulbC is not null)
                .GroupBy(reading => weather.SolarDayNumber(reading.Time))
                .Where(day => day.Count() >= LeastReadingsOfDay)
                .Select(day => Harmonic.Of(day.Select(reading => (weather.SolarHour(reading.Time), reading.DryBulbC!.Value)))),
        ];
        Harmonic mean = Harmonic.Mean(days);
        return days.Count < LeastDaysOfTemperature || mean.Swing < LeastSwingK || mean.Swing < LeastCoherence * days.Average(day => day.Swing)
            ? null
            : Late(mean.PeakH, WarmestH);
    }

    private static double Late(double hour, double expected) => Math.IEEERemainder(hour - expected, HoursInDay);
}

using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Review;

/// <summary>How old the weather is at a moment.</summary>
/// <param name="Now">The moment.</param>
/// <param name="LastKnown">The newest time up to it whose temperature, humidity or rain was observed or analysed; null where none was.</param>
/// <param name="LastObserved">The same, of what was observed at the site alone.</param>
/// <param name="LastGauged">When the rain gauge was last read as a total; null where never.</param>
/// <param name="LastForecast">The last hour of the forecast; null where there is none.</param>
/// <param name="ForecastSavedAt">When the newest forecast was saved or fetched; null where there is none.</param>
public sealed record WeatherAge(
    DateTimeOffset Now,
    DateTimeOffset? LastKnown,
    DateTimeOffset? LastObserved,
    DateTimeOffset? LastGauged,
    DateTimeOffset? LastForecast,
    DateTimeOffset? ForecastSavedAt)
{
    /// <summary>Hours since the last reading; null where there is none.</summary>
    public double? KnownAgoH => (Now - LastKnown)?.TotalHours;

    /// <summary>Hours since the newest forecast was saved; null where there is none.</summary>
    public double? ForecastAgoH => (Now - ForecastSavedAt)?.TotalHours;

    /// <summary>Nothing was read for so long that the air now is not known from readings.</summary>
    public bool IsStale => !(KnownAgoH <= StaleWeather.OldH);

    /// <summary>Of weather made one, with its gauge totals.</summary>
    public static WeatherAge Of(ComposedWeather weather, DateTimeOffset now)
    {
        List<ValueOrigin> forecast = [.. weather.Readings.SelectMany(Origins).Where(origin => origin.IsForecast)];
        return new(
            now,
            StaleWeather.NewestObserved(weather.Weather, now),
            StaleWeather.NewestObserved([.. weather.Readings.Where(IsObserved).Select(reading => reading.Observed!)], now),
            weather.RainTotals.Where(total => total.To <= now).Max(total => (DateTimeOffset?)total.To),
            weather.Forecast.Max(reading => (DateTimeOffset?)reading.Time),
            forecast.Max(origin => (DateTimeOffset?)origin.SavedAt));
    }

    private static bool IsObserved(ComposedReading reading) =>
        new[] { reading.Origins.DryBulb, reading.Origins.Humidity, reading.Origins.Rain }
            .Any(origin => origin?.Source == WeatherSource.Observed);

    private static IEnumerable<ValueOrigin> Origins(ComposedReading reading) => new[]
    {
        reading.Origins.DryBulb, reading.Origins.Humidity, reading.Origins.Rain,
        reading.Origins.Wind, reading.Origins.StationPressure, reading.Origins.Shortwave,
    }.OfType<ValueOrigin>();
}

namespace WitherAdvisor.Readings.Sources;

/// <summary>Where one value of a composed reading is from.</summary>
/// <param name="Source">Which kind of source.</param>
/// <param name="Feed">Name of the feed that brought it; null where none did.</param>
/// <param name="SavedAt">When the reading it stood in was last saved or fetched.</param>
public sealed record ValueOrigin(WeatherSource Source, string? Feed, DateTimeOffset SavedAt)
{
    /// <summary>Forecast; otherwise observed or analysed.</summary>
    public bool IsForecast => Source is WeatherSource.CallerForecast or WeatherSource.FeedForecast;
}

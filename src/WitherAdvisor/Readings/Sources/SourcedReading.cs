namespace WitherAdvisor.Readings.Sources;

/// <summary>A reading and where it is from.</summary>
/// <param name="Reading">What it tells.</param>
/// <param name="Source">Which kind of source.</param>
/// <param name="Feed">Name of the feed that brought it; null where none did.</param>
/// <param name="SavedAt">When it was last saved or fetched.</param>
public sealed record SourcedReading(WeatherReading Reading, WeatherSource Source, string? Feed, DateTimeOffset SavedAt);

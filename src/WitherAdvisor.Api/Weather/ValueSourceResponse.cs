using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Api.Weather;

/// <summary>Where one value is from.</summary>
public sealed record ValueSourceResponse
{
    /// <summary>Observed at the site, a feed's analysis, a caller's forecast, or a feed's forecast; the first of these that knows a value gives it.</summary>
    /// <example>feed_analysis</example>
    public required WeatherSource Source { get; init; }

    /// <summary>Name of the feed; null where none brought it.</summary>
    /// <example>hill-feed</example>
    public required string? Feed { get; init; }

    /// <summary>When the reading it stood in was saved, or fetched from the feed.</summary>
    /// <example>2026-03-01T12:00:00+05:30</example>
    public required DateTimeOffset SavedAt { get; init; }
}

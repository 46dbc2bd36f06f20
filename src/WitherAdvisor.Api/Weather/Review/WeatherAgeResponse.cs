using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>How old weather is.</summary>
[Computed]
public sealed record WeatherAgeResponse
{
    /// <summary>The newest time whose temperature, humidity or rain was observed or analysed; null where none was.</summary>
    /// <example>2026-03-01T10:00:00+05:30</example>
    public required DateTimeOffset? LastKnownAt { get; init; }

    /// <summary>Hours since then.</summary>
    /// <example>3</example>
    public required double? ReadAgoHours { get; init; }

    /// <summary>The newest time observed at the site; null where none was.</summary>
    /// <example>2026-03-01T07:00:00+05:30</example>
    public required DateTimeOffset? LastObservedAt { get; init; }

    /// <summary>When the rain gauge was last read as a total; null where never.</summary>
    /// <example>2026-03-01T07:00:00+05:30</example>
    public required DateTimeOffset? LastGaugedAt { get; init; }

    /// <summary>The last hour of the forecast; null where there is none.</summary>
    /// <example>2026-03-02T13:00:00+05:30</example>
    public required DateTimeOffset? LastForecastAt { get; init; }

    /// <summary>When the newest forecast was saved or fetched; null where there is none.</summary>
    /// <example>2026-03-01T12:00:00+05:30</example>
    public required DateTimeOffset? ForecastSavedAt { get; init; }

    /// <summary>Hours since then.</summary>
    /// <example>1</example>
    public required double? ForecastAgoHours { get; init; }

    /// <summary>Whether nothing was read for so long (over 3 h) that the air is not known from readings.</summary>
    /// <example>false</example>
    public required bool IsStale { get; init; }
}

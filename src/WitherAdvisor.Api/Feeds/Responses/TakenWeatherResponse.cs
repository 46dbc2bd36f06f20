namespace WitherAdvisor.Api.Feeds.Responses;

/// <summary>Weather that a feed gave and that is kept.</summary>
public sealed record TakenWeatherResponse
{
    /// <summary>When it came.</summary>
    /// <example>2026-03-01T07:20:05Z</example>
    public required DateTimeOffset FetchedAt { get; init; }

    /// <summary>When the feed made it: earlier where an old answer was kept on the way.</summary>
    /// <example>2026-03-01T07:20:05Z</example>
    public required DateTimeOffset AsOf { get; init; }

    /// <summary>Hours that the feed takes to have been; nobody read them.</summary>
    /// <example>2216</example>
    public required int AnalysedHours { get; init; }

    /// <summary>Hours that it forecasts.</summary>
    /// <example>64</example>
    public required int ForecastHours { get; init; }

    /// <summary>The first hour; null where none could be kept.</summary>
    /// <example>2025-11-29T00:00:00Z</example>
    public required DateTimeOffset? From { get; init; }

    /// <summary>The last hour.</summary>
    /// <example>2026-03-03T23:00:00Z</example>
    public required DateTimeOffset? To { get; init; }

    /// <summary>What was missing, corrected or left out; empty where all is well.</summary>
    public required IReadOnlyList<FeedNoteResponse> Notes { get; init; }

    /// <summary>Where on the map it is of.</summary>
    public required FeedCellResponse Cell { get; init; }
}

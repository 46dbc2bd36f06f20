using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Api.Feeds.Responses;

/// <summary>A feed that a site may name, and how it has been doing since the service started.</summary>
public sealed record ConfiguredFeedResponse
{
    /// <summary>As the operator named it.</summary>
    /// <example>hill</example>
    public required string Name { get; init; }

    /// <summary>The line that has to be shown beside its numbers; empty where its licence wants none.</summary>
    /// <example>Weather by an invented feed</example>
    public required string Attribution { get; init; }

    /// <summary>Whether it is asked at all: open means that it failed again and again and is left in peace.</summary>
    /// <example>closed</example>
    public required FeedBreaker Breaker { get; init; }

    /// <summary>When it last gave weather; null if never.</summary>
    /// <example>2026-03-01T07:20:05Z</example>
    public required DateTimeOffset? LastGoodAt { get; init; }

    /// <summary>When it last gave none; null if never.</summary>
    /// <example>2026-03-01T06:20:05Z</example>
    public required DateTimeOffset? LastRefusedAt { get; init; }

    /// <summary>Why it gave none then; null if it never refused.</summary>
    public required FeedRefusalResponse? LastRefusal { get; init; }

    /// <summary>It is not asked again before then; null where it may be asked now.</summary>
    /// <example>2026-03-01T08:01:00Z</example>
    public required DateTimeOffset? RetryAfter { get; init; }
}

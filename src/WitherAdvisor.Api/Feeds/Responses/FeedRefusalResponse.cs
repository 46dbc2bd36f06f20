using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Api.Feeds.Responses;

/// <summary>Why a feed gave no weather.</summary>
public sealed record FeedRefusalResponse
{
    /// <summary>Which kind of fault.</summary>
    /// <example>server_fault</example>
    public required RefusalReason Reason { get; init; }

    /// <summary>A sentence for people.</summary>
    /// <example>The feed failed (status 503)</example>
    public required string Text { get; init; }

    /// <summary>Do not ask again before then; null where nothing is known.</summary>
    /// <example>2026-03-01T08:01:00Z</example>
    public required DateTimeOffset? RetryAfter { get; init; }
}

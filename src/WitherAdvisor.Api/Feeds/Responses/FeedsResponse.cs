using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Feeds.Responses;

/// <summary>The feeds that the operator configured, and how often weather is fetched from them.</summary>
[Computed]
public sealed record FeedsResponse
{
    /// <summary>Hours from one fetch of a site to the next; 0 where weather is fetched on demand only.</summary>
    /// <example>1</example>
    public required double RefreshEveryHours { get; init; }

    /// <summary>By name.</summary>
    public required IReadOnlyList<ConfiguredFeedResponse> Feeds { get; init; }
}

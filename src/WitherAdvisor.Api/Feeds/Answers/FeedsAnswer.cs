using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Feeds.Answers;

/// <summary>The feeds that the operator configured, and how often weather is fetched from them.</summary>
[Computed]
public sealed record FeedsAnswer
{
    /// <summary>Hours from one fetch of a site to the next; 0 where weather is fetched on demand only.</summary>
    /// <example>1</example>
    public required double RefreshEveryHours { get; init; }

    /// <summary>By name.</summary>
    public required IReadOnlyList<ConfiguredFeedAnswer> Feeds { get; init; }
}

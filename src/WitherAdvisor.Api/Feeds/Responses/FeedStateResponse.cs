using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Feeds.Responses;

/// <summary>State of a site's feed: how old its weather is, and how the last fetch went.</summary>
[Computed]
public sealed record FeedStateResponse
{
    /// <summary>Name of the feed.</summary>
    /// <example>hill</example>
    public required string Feed { get; init; }

    /// <summary>The line that has to be shown beside its numbers; null where the feed is no longer configured.</summary>
    /// <example>Weather by an invented feed</example>
    public required string? Attribution { get; init; }

    /// <summary>When it last gave weather for the site; null if never.</summary>
    /// <example>2026-03-01T07:20:05Z</example>
    public required DateTimeOffset? LastGoodAt { get; init; }

    /// <summary>The newest hour that it took to have been and did not forecast; null where there is none.</summary>
    /// <example>2026-03-01T07:00:00Z</example>
    public required DateTimeOffset? NewestAnalysedAt { get; init; }

    /// <summary>Age of that hour; null where there is none.</summary>
    /// <example>0.33</example>
    public required double? AgeHours { get; init; }

    /// <summary>What was missing, corrected or left out in the weather that it last gave, a sentence each.</summary>
    /// <example>["Hours that were asked for did not come: 3 hours, the first 2026-02-27T20:00Z."]</example>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>When it refused, if it did so when last asked; null where it gave weather or was never asked.</summary>
    /// <example>2026-03-01T08:20:05Z</example>
    public required DateTimeOffset? RefusedAt { get; init; }

    /// <summary>Why it refused then, a sentence.</summary>
    /// <example>The feed failed (status 503)</example>
    public required string? Refusal { get; init; }

    /// <summary>All this as sentences for people, in the time of the site.</summary>
    /// <example>The feed hill last gave weather on Sun 1 Mar 2026, 12:50. Weather by an invented feed.</example>
    public required string Text { get; init; }
}

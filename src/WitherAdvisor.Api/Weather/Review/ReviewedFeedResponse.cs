namespace WitherAdvisor.Api.Weather.Review;

/// <summary>A site's feed and how it has been doing.</summary>
public sealed record ReviewedFeedResponse
{
    /// <summary>As the operator named it.</summary>
    /// <example>hill-feed</example>
    public required string Name { get; init; }

    /// <summary>The line that has to stand beside its numbers; null where the operator has no such feed any more.</summary>
    /// <example>Weather data by Example Weather (invented)</example>
    public required string? Attribution { get; init; }

    /// <summary>When it was last asked; null where never.</summary>
    /// <example>2026-03-01T12:00:00+05:30</example>
    public required DateTimeOffset? LastFetchedAt { get; init; }

    /// <summary>Why it gave no weather then; null where it did.</summary>
    /// <example>The feed did not answer within 10 s.</example>
    public required string? LastRefusal { get; init; }

    /// <summary>When it last gave weather; null where it never did.</summary>
    /// <example>2026-03-01T11:00:00+05:30</example>
    public required DateTimeOffset? LastGoodAt { get; init; }

    /// <summary>What was missing, corrected or left out in that answer, a sentence each.</summary>
    /// <example>["Rain was missing for 3 of the hours."]</example>
    public required IReadOnlyList<string> Notes { get; init; }
}

namespace WitherAdvisor.Api.Feeds.Responses;

/// <summary>Something missing, corrected or left out in what a feed gave.</summary>
public sealed record FeedNoteResponse
{
    /// <summary>Its name.</summary>
    /// <example>missing_hours</example>
    public required string Code { get; init; }

    /// <summary>A sentence for people.</summary>
    /// <example>Hours that were asked for did not come: 3 hours, the first 2026-02-27T20:00Z.</example>
    public required string Text { get; init; }
}

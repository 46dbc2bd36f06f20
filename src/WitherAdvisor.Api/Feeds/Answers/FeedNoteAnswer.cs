namespace WitherAdvisor.Api.Feeds.Answers;

/// <summary>Something missing, corrected or left out in what a feed gave.</summary>
public sealed record FeedNoteAnswer
{
    /// <summary>Its name.</summary>
    /// <example>missing_hours</example>
    public required string Code { get; init; }

    /// <summary>A sentence for people.</summary>
    /// <example>Nothing is known of hours that were asked for: 3 hours, the first 2026-02-27T20:00Z.</example>
    public required string Text { get; init; }
}

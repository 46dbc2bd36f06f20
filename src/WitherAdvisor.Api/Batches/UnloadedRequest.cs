namespace WitherAdvisor.Api.Batches;

/// <summary>Says that a batch has left its trough.</summary>
public sealed record UnloadedRequest
{
    /// <summary>When; after it was loaded.</summary>
    /// <example>2026-03-01T23:10:00+05:30</example>
    public required DateTimeOffset UnloadedAt { get; init; }
}

using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Batches;

/// <summary>Says that the leaf of a batch was not withered here after all.</summary>
public sealed record CancelledRequest
{
    /// <summary>When its leaf left the trough; after it was loaded.</summary>
    /// <example>2026-03-01T14:00:00+05:30</example>
    public required DateTimeOffset CancelledAt { get; init; }

    /// <summary>Why.</summary>
    /// <example>The fan of the trough failed; the leaf went to another factory.</example>
    [Text(400)]
    public required string Reason { get; init; }
}

using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Batches;

/// <summary>Says that the leaf of a batch was put together with that of another, which counts from then on.</summary>
public sealed record MixedRequest
{
    /// <summary>When; after both were loaded, and before the other was unloaded.</summary>
    /// <example>2026-03-01T14:00:00+05:30</example>
    public required DateTimeOffset MixedAt { get; init; }

    /// <summary>Id of the other batch, of the same site.</summary>
    /// <example>0199d2b5-6f10-7c3a-9d4e-2f6a1b3c5d7e</example>
    [Text(60)]
    public required string Into { get; init; }

    /// <summary>Why.</summary>
    /// <example>Too little leaf for a trough of its own.</example>
    [Text(400)]
    public required string Reason { get; init; }
}

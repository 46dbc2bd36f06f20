namespace WitherAdvisor.Api.Batches;

/// <summary>Leaf that should be kept apart and is not. A warning: the person in charge decides.</summary>
public sealed record LotWarning
{
    /// <summary>One of: holds_another_batch, holds_another_label, mixes_bush_ages, mixes_cultivars, mixes_leaf_standards, load_over_most.</summary>
    /// <example>holds_another_label</example>
    public required string Code { get; init; }

    /// <summary>The batch on the trough that it is about; null where it is about all of them.</summary>
    /// <example>0199d2b5-6f10-7c3a-9d4e-2f6a1b3c5d7e</example>
    public required string? OtherBatch { get; init; }

    /// <summary>A sentence for people.</summary>
    /// <example>Leaf of Upper division, Field 7 is still on trough-1. If it has left, mark it unloaded.</example>
    public required string Text { get; init; }
}

using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Loft.Advising;

/// <summary>What came of advising on a batch again.</summary>
public abstract record AgainResult
{
    private AgainResult()
    {
    }

    public sealed record Advised(StoredBatch Batch, KeptAdvice Advice) : AgainResult;

    public sealed record UnknownBatch : AgainResult;

    /// <summary>Its leaf is off the trough.</summary>
    public sealed record Ended(StoredBatch Batch) : AgainResult;
}

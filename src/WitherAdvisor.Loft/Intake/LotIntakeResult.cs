using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Loft.Intake;

/// <summary>What became of a lot that was brought onto a batch.</summary>
public abstract record LotIntakeResult
{
    private LotIntakeResult()
    {
    }

    /// <summary>The batch has grown and is advised on again.</summary>
    public sealed record Taken(StoredBatch Batch, IReadOnlyList<LotWarning> Warnings, KeptAdvice Advice) : LotIntakeResult;

    public sealed record UnknownSite : LotIntakeResult;

    public sealed record UnknownBatch : LotIntakeResult;

    /// <summary>Its leaf is off the trough.</summary>
    public sealed record Ended(StoredBatch Batch) : LotIntakeResult;

    /// <summary>It cannot be, or does not fit the trough.</summary>
    public sealed record Refused(IReadOnlyList<BatchFault> Faults) : LotIntakeResult;
}

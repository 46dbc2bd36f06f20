using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Loft.Intake;

/// <summary>What became of a batch that was brought in.</summary>
public abstract record IntakeResult
{
    private IntakeResult()
    {
    }

    /// <summary>It is kept, with its first advice.</summary>
    public sealed record Taken(StoredBatch Batch, IReadOnlyList<LotWarning> Warnings, KeptAdvice Advice) : IntakeResult;

    /// <summary>The very same batch lies on the trough already; nothing more was kept.</summary>
    public sealed record AlreadyThere(StoredBatch Batch) : IntakeResult;

    public sealed record UnknownSite : IntakeResult;

    public sealed record UnknownTrough : IntakeResult;

    /// <summary>It cannot be, or does not fit the trough.</summary>
    public sealed record Refused(IReadOnlyList<BatchFault> Faults) : IntakeResult;
}

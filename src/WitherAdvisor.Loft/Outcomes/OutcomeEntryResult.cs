using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.Loft.Outcomes;

/// <summary>What came of entering an outcome.</summary>
public abstract record OutcomeEntryResult
{
    private OutcomeEntryResult()
    {
    }

    /// <summary>As it is kept now.</summary>
    /// <param name="IsFirst">Whether nothing had been entered for the batch before.</param>
    public sealed record Kept(StoredOutcome Outcome, bool IsFirst) : OutcomeEntryResult;

    public sealed record UnknownBatch : OutcomeEntryResult;

    /// <summary>It has to be unloaded first.</summary>
    public sealed record StillOnTrough : OutcomeEntryResult;

    /// <summary>It was cancelled or mixed into another, so that it has no outcome.</summary>
    public sealed record EndedOtherwise(StoredBatch Batch) : OutcomeEntryResult;

    public sealed record Impossible(IReadOnlyList<OutcomeFault> Faults) : OutcomeEntryResult;

    /// <summary>Nobody has confirmed these.</summary>
    public sealed record Unusual(IReadOnlyList<OutcomeOddity> Oddities) : OutcomeEntryResult;
}

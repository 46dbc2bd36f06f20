using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Loft.Closing;

/// <summary>What came of ending a batch.</summary>
public abstract record ClosingResult
{
    private ClosingResult()
    {
    }

    public sealed record Ended(StoredBatch Batch) : ClosingResult;

    public sealed record UnknownBatch : ClosingResult;

    /// <summary>This batch, or the one it was to be mixed into, ended before, and how.</summary>
    public sealed record EndedBefore(StoredBatch Batch) : ClosingResult;

    public sealed record BeforeLoading(StoredBatch Batch, DateTimeOffset At) : ClosingResult;

    /// <summary>The leaf that it was to be mixed into was not on its trough yet.</summary>
    public sealed record BeforeLoadingOfTheOther(StoredBatch Other, DateTimeOffset At) : ClosingResult;

    /// <summary>There is no such other batch at the site.</summary>
    public sealed record NoSuchOther(StoredBatch Batch, string Into) : ClosingResult;
}

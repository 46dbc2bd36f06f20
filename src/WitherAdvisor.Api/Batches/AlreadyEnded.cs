using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Api.Batches;

/// <summary>The answer to what only makes sense while a batch runs: it ended once, and cannot end otherwise.</summary>
internal static class AlreadyEnded
{
    /// <summary>Says how it ended.</summary>
    /// <param name="ended">A batch that no longer runs.</param>
    public static ProblemResult Batch(StoredBatch ended) => ended.Ended switch
    {
        BatchEnd.Cancelled => Problem.Conflict(
            "already-cancelled", "The batch was cancelled.", $"Batch '{ended.Id}' was cancelled already: {ended.EndReason}"),
        BatchEnd.Mixed => Problem.Conflict(
            "already-mixed", "The batch was mixed into another.", $"Batch '{ended.Id}' was mixed into '{ended.MixedIntoId}' already: {ended.EndReason}"),
        _ => Problem.Conflict("already-unloaded", "The batch has left its trough.", $"Batch '{ended.Id}' was unloaded already."),
    };
}

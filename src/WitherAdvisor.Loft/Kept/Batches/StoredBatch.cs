using WitherAdvisor.Leaf;

namespace WitherAdvisor.Loft.Kept.Batches;

/// <summary>A batch as kept.</summary>
/// <param name="Id">Made by the service.</param>
/// <param name="UnloadedAt">When its leaf left the trough, however it ended; null while it lies there, and where nobody knows.</param>
/// <param name="Ended">How it ended; null while it runs.</param>
/// <param name="EndReason">Why it was cancelled or mixed, a person's words; null where nobody said.</param>
/// <param name="MixedIntoId">The batch that its leaf was mixed into; null where it was not.</param>
/// <param name="PluckingAssumed">Whether nobody knew when it was plucked, and times were taken from that of loading.</param>
public sealed record StoredBatch(
    string Id, string SiteId, string TroughId, Batch Batch, DateTimeOffset CreatedAt, DateTimeOffset? UnloadedAt = null,
    BatchEnd? Ended = null, string? EndReason = null, string? MixedIntoId = null, bool PluckingAssumed = false)
{
    public bool IsRunning => Ended is null;
}

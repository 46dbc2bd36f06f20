namespace WitherAdvisor.Loft.Kept.Batches;

/// <summary>What the store saw on the trough in the same write that added a batch.</summary>
/// <param name="LyingThere">The other batches whose leaf lay on the trough as this one was loaded, last loaded first.</param>
/// <param name="Same">The batch that was there already and is the same to the last field; then nothing was added. Null where none was, or nobody asked.</param>
public sealed record AddedBatch(IReadOnlyList<StoredBatch> LyingThere, StoredBatch? Same);

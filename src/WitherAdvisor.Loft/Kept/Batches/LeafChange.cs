using WitherAdvisor.Leaf;

namespace WitherAdvisor.Loft.Kept.Batches;

/// <summary>Other leaf for a running batch, more lots of it, with the advice for it.</summary>
/// <param name="Seen">The batch as it was when the change was made up; of one that has changed since or ended nothing is kept.</param>
/// <param name="Leaf">Its leaf from now on.</param>
public sealed record LeafChange(StoredBatch Seen, Batch Leaf, MadeAdvice Advice);

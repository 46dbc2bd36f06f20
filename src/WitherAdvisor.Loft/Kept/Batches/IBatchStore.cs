namespace WitherAdvisor.Loft.Kept.Batches;

/// <summary>Batches and the advice given for them. Times come back as the same instants to the millisecond, with offset zero.</summary>
public interface IBatchStore
{
    /// <summary>Most that <see cref="OnTrough"/> and <see cref="ListAdvice"/> answer: nobody marks every batch unloaded, and advice is long.</summary>
    const int MostListed = 100;

    /// <summary>
    /// Keeps a batch together with its first advice, both or neither, and tells what lay on the trough in the same write: of
    /// batches that come in at once each sees those before it.
    /// </summary>
    /// <param name="onceOnly">Whether to keep nothing where the very same batch lies there already.</param>
    /// <exception cref="ParentNotFoundException">No such trough at that site.</exception>
    Task<AddedBatch> Add(StoredBatch batch, MadeAdvice advice, bool onceOnly, CancellationToken cancel = default);

    Task<StoredBatch?> Find(string batchId, CancellationToken cancel = default);

    /// <summary>Newest first, at most <paramref name="most"/>, which is 1 or more.</summary>
    Task<IReadOnlyList<StoredBatch>> List(string siteId, int most, CancellationToken cancel = default);

    /// <summary>Batches whose leaf lies on a trough at an instant: loaded by then, not ended by then. Last loaded first.</summary>
    Task<IReadOnlyList<StoredBatch>> OnTrough(
        string siteId, string troughId, DateTimeOffset at, CancellationToken cancel = default);

    /// <summary>Ends a running batch as unloaded. False where there is no such batch or it has ended already.</summary>
    Task<bool> MarkUnloaded(string batchId, DateTimeOffset at, CancellationToken cancel = default);

    /// <summary>Ends a running batch as cancelled. False where there is no such batch or it has ended already.</summary>
    Task<bool> MarkCancelled(string batchId, DateTimeOffset at, string reason, CancellationToken cancel = default);

    /// <summary>
    /// Ends a running batch as mixed into another, and lets that grow by its leaf, both or neither. False where there is no
    /// such batch, it has ended already, or the other is not as seen.
    /// </summary>
    /// <param name="grown">The other with the leaf of this; null where it has left its trough and nothing is advised any more.</param>
    /// <exception cref="ParentNotFoundException">There is no such other batch.</exception>
    Task<bool> MarkMixed(
        string batchId, DateTimeOffset at, string intoBatchId, string reason, LeafChange? grown, CancellationToken cancel = default);

    /// <summary>Keeps other leaf for a running batch together with its advice, both or neither. False where the batch is not as seen.</summary>
    Task<bool> ChangeLeaf(LeafChange change, CancellationToken cancel = default);

    /// <summary>Keeps a further advice for a batch.</summary>
    /// <exception cref="ParentNotFoundException">No such batch.</exception>
    Task AddAdvice(MadeAdvice advice, CancellationToken cancel = default);

    Task<KeptAdvice?> FindAdvice(string adviceId, CancellationToken cancel = default);

    /// <summary>Newest first.</summary>
    Task<IReadOnlyList<KeptAdvice>> ListAdvice(string batchId, CancellationToken cancel = default);
}

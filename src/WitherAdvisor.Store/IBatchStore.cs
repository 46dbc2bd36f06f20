namespace WitherAdvisor.Store;

/// <summary>Batches and the advice given for them.</summary>
public interface IBatchStore
{
    /// <summary>Keeps a batch together with its first advice: both or neither.</summary>
    Task Add(StoredBatch batch, StoredAdvice advice, CancellationToken cancel = default);

    Task<StoredBatch?> Find(string batchId, CancellationToken cancel = default);

    /// <summary>Newest first.</summary>
    Task<IReadOnlyList<StoredBatch>> List(string siteId, int most, CancellationToken cancel = default);

    /// <summary>Batches whose leaf lies on a trough at an instant: loaded by then, not unloaded by then.</summary>
    Task<IReadOnlyList<StoredBatch>> OnTrough(
        string siteId, string troughId, DateTimeOffset at, CancellationToken cancel = default);

    /// <summary>False where there is no such batch or it was unloaded already.</summary>
    Task<bool> MarkUnloaded(string batchId, DateTimeOffset at, CancellationToken cancel = default);

    Task AddAdvice(StoredAdvice advice, CancellationToken cancel = default);

    Task<StoredAdvice?> FindAdvice(string adviceId, CancellationToken cancel = default);

    /// <summary>Newest first.</summary>
    Task<IReadOnlyList<StoredAdvice>> ListAdvice(string batchId, CancellationToken cancel = default);
}

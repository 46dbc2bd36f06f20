using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Loft.Kept.Outcomes;

/// <summary>What came of batches. Times come back as the same instants to the millisecond, with offset zero.</summary>
public interface IOutcomeStore
{
    /// <summary>Keeps an outcome; what was entered for the batch before stays in its history.</summary>
    /// <exception cref="ParentNotFoundException">No such batch.</exception>
    Task Put(StoredOutcome outcome, CancellationToken cancel = default);

    /// <summary>The newest version; null where nobody entered any.</summary>
    Task<StoredOutcome?> Find(string batchId, CancellationToken cancel = default);

    /// <summary>All versions, newest first.</summary>
    Task<IReadOnlyList<StoredOutcome>> History(string batchId, CancellationToken cancel = default);

    /// <summary>The figures of the last advice given for a batch; null where there was none.</summary>
    Task<AdviceFigures?> LastAdvice(string batchId, CancellationToken cancel = default);

    /// <summary>The log of a site by loading, row by row as it is read: all of it never stands in memory.</summary>
    IAsyncEnumerable<LoggedOutcome> Log(string siteId, OutcomeFilter filter, CancellationToken cancel = default);

    /// <summary>Every batch of a site loaded at or after a time and not cancelled or mixed away, by loading.</summary>
    IAsyncEnumerable<LoadedBatch> Loaded(string siteId, DateTimeOffset from, CancellationToken cancel = default);

    /// <summary>Runs an import within one transaction; all that it added is kept where it answers true, and none of it otherwise.</summary>
    /// <returns>What <paramref name="import"/> answered.</returns>
    Task<bool> Import(string siteId, Func<IOutcomeImport, bool> import, CancellationToken cancel = default);

    /// <summary>Runs an import that keeps nothing and makes nobody wait.</summary>
    Task Preview(string siteId, Action<IOutcomeImport> import, CancellationToken cancel = default);

    /// <summary>The scales of a site's taster, in the site's own order.</summary>
    Task<IReadOnlyList<TasterScale>> ListScales(string siteId, CancellationToken cancel = default);

    /// <summary>Replaces the scales of a site. Marks already given stay as they are.</summary>
    /// <exception cref="ParentNotFoundException">No such site.</exception>
    Task PutScales(string siteId, IReadOnlyList<TasterScale> scales, CancellationToken cancel = default);
}

using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Loft.Kept.Outcomes;

/// <summary>What an import sees of a site's batches and adds to them.</summary>
public interface IOutcomeImport
{
    /// <summary>The batch of this id; null where there is none at any site.</summary>
    KeptBatch? Find(string batchId);

    /// <summary>A batch of the site by what a paper log knows it by; null where there is none.</summary>
    KeptBatch? Find(string troughId, DateTimeOffset loadedAt, string division, string field);

    /// <summary>Adds a batch of the past that has no advice here.</summary>
    void Add(StoredBatch batch);

    /// <summary>Ends a running batch as unloaded, at a time that may be unknown.</summary>
    void Unload(string batchId, DateTimeOffset? at);

    /// <summary>Adds an outcome to a batch that has none.</summary>
    void Add(StoredOutcome outcome);

    /// <summary>Adds the figures of an advice that was given elsewhere.</summary>
    void Add(AdviceFigures figures);
}

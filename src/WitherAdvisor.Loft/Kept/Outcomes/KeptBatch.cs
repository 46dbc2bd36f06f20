using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Loft.Kept.Outcomes;

/// <summary>A batch as an import finds it.</summary>
/// <param name="Outcome">Null where it has none.</param>
/// <param name="Advice">The last advice given for it; null where there was none.</param>
public sealed record KeptBatch(StoredBatch Batch, StoredOutcome? Outcome, AdviceFigures? Advice);

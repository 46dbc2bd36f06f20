using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Loft.Kept.Outcomes;

/// <summary>A line of the log: a batch, what came of it, and the last advice given for it (null where there was none).</summary>
public sealed record LoggedOutcome(StoredBatch Batch, StoredOutcome Outcome, AdviceFigures? Advice);

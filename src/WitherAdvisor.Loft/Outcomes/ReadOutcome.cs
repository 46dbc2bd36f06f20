using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.Loft.Outcomes;

/// <summary>An outcome as kept, with what follows from it and its batch.</summary>
public sealed record ReadOutcome(StoredOutcome Kept, OutcomeComputed Computed);

using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Loft.Kept.Outcomes;

/// <summary>An outcome as kept: one version of it.</summary>
/// <param name="BatchId">The batch it is of.</param>
/// <param name="EnteredAt">When it was entered.</param>
/// <param name="EnteredBy">Who entered it, as they called themselves; null where nobody said.</param>
/// <param name="Confirmed">Codes of what looked odd and was confirmed to be so.</param>
public sealed record StoredOutcome(
    string BatchId, WitherOutcome Outcome, DateTimeOffset EnteredAt, string? EnteredBy, IReadOnlyList<string> Confirmed);

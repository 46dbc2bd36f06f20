using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Loft.Outcomes;

/// <summary>An outcome as somebody enters it.</summary>
/// <param name="EnteredBy">As they call themselves; null where nobody said.</param>
/// <param name="Confirmed">Codes of what was looked at: it looks odd and is so.</param>
public sealed record EnteredOutcome(WitherOutcome Outcome, string? EnteredBy, IReadOnlyList<string> Confirmed);

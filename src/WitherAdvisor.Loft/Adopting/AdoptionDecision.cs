namespace WitherAdvisor.Loft.Adopting;

/// <summary>A person's decision to adopt a set. Null where nobody said.</summary>
/// <param name="AdoptedBy">Who, as they call themselves.</param>
/// <param name="Reason">Why.</param>
/// <param name="OverrideReason">Why although it was not shown to be better.</param>
public sealed record AdoptionDecision(string? AdoptedBy, string? Reason, string? OverrideReason);

namespace WitherAdvisor.Loft.Outcomes;

/// <summary>Where in an outcome.</summary>
/// <param name="Index">Which of a list, from 0; null where there is one only.</param>
public sealed record OutcomePlace(OutcomeTerm Term, int? Index = null);

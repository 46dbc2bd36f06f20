namespace WitherAdvisor.Plans.Writing;

/// <summary>Something that would make a plan possible.</summary>
/// <param name="Kind">What to do.</param>
/// <param name="Amount">How much, in the unit that <see cref="ReliefKind"/> states; null where it has none.</param>
public sealed record Relief(ReliefKind Kind, double? Amount);

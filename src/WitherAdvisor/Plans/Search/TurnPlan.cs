namespace WitherAdvisor.Plans.Search;

/// <summary>When the leaf is turned.</summary>
/// <param name="Hours">Hours from loading.</param>
/// <param name="LargestSpreadWetBasis">Largest spread of tissue moisture between layers.</param>
/// <param name="WithOneMoreWetBasis">The same with one turn more; null where no more fit in.</param>
internal sealed record TurnPlan(IReadOnlyList<double> Hours, double LargestSpreadWetBasis, double? WithOneMoreWetBasis);

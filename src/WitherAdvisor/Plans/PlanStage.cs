namespace WitherAdvisor.Plans;

/// <summary>A stage of a plan. Hours count from loading.</summary>
/// <param name="Kind">Which.</param>
/// <param name="FromHour">Start.</param>
/// <param name="ToHour">End.</param>
/// <param name="WantedHygrometricDifferenceK">What is held under the mesh where the ambient air is not above it, K; null in cooling.</param>
public sealed record PlanStage(StageKind Kind, double FromHour, double ToHour, double? WantedHygrometricDifferenceK);

namespace WitherAdvisor.Plans;

/// <summary>A stage of a plan. Hours count from loading.</summary>
/// <param name="Kind">Which.</param>
/// <param name="FromHour">Start.</param>
/// <param name="ToHour">End.</param>
/// <param name="WantedHygrometricDifferenceK">What is held under the mesh where the ambient air is not above it, K; null where no heat is wanted.</param>
/// <param name="FanShare">Share of the trough's full airflow while the fan runs.</param>
/// <param name="RunShare">Share of the time that the fan runs.</param>
public sealed record PlanStage(StageKind Kind, double FromHour, double ToHour, double? WantedHygrometricDifferenceK, double FanShare = 1, double RunShare = 1);

namespace WitherAdvisor.Plans;

/// <summary>The air that is held on a trough before it cools.</summary>
/// <param name="DifferenceK">Hygrometric difference of the main stage, K; 0 for ambient air as it is.</param>
/// <param name="SurfaceDifferenceK">The same until the first leaf is dry on its surface, K.</param>
/// <param name="FanShare">Share of full airflow while the fan runs.</param>
/// <param name="RunShare">Share of the time that the fan runs.</param>
public sealed record HeldAir(double DifferenceK, double SurfaceDifferenceK, double FanShare = 1, double RunShare = 1);

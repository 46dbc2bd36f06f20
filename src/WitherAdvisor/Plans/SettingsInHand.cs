namespace WitherAdvisor.Plans;

/// <summary>What people hold on a trough that is under way, by the plan they were given.</summary>
/// <param name="DifferenceK">Hygrometric difference of the main stage, K.</param>
/// <param name="SurfaceDifferenceK">The same while surface water remains, K.</param>
/// <param name="FanShare">Share of full airflow.</param>
/// <param name="TurnIntervalHours">Whole hours between turns.</param>
public sealed record SettingsInHand(double DifferenceK, double SurfaceDifferenceK, double FanShare, int TurnIntervalHours);

namespace WitherAdvisor.Plans.Search;

/// <summary>A plan tried in the search. Hours count from loading.</summary>
/// <param name="DifferenceK">Hygrometric difference held in the main stage, K.</param>
/// <param name="SurfaceDifferenceK">The same while surface water remains, K.</param>
/// <param name="FanShare">Share of full airflow.</param>
/// <param name="TurnIntervalHours">Whole hours between turns.</param>
/// <param name="HeatOffHour">When cooling begins.</param>
/// <param name="StopHour">When the leaf goes to rolling.</param>
/// <param name="HeatedHoursToTarget">Hours to the target if the main air were kept on.</param>
/// <param name="CoolingDelayHours">How much later it is reached because the last hours are on ambient air.</param>
/// <param name="SurfaceEndHour">When the surface stage ends: on the last quarter hour before the surface is dry, so that air meant for wet leaf never blows on dry.</param>
/// <param name="FinalMoistureWetBasis">At the stop.</param>
/// <param name="LargestSpreadWetBasis">Of tissue moisture between layers.</param>
/// <param name="HeatKWhPerM2">Heat mixed in.</param>
/// <param name="Cost">What the soft terms add up to: see <see cref="PlanCost"/>.</param>
/// <param name="Broken">The hard limit it breaks; null where it breaks none.</param>
internal sealed record Candidate(
    double DifferenceK,
    double SurfaceDifferenceK,
    double FanShare,
    int TurnIntervalHours,
    double HeatOffHour,
    double StopHour,
    double? HeatedHoursToTarget,
    double CoolingDelayHours,
    double SurfaceEndHour,
    double FinalMoistureWetBasis,
    double LargestSpreadWetBasis,
    double HeatKWhPerM2,
    double Cost,
    LimitNotice? Broken);

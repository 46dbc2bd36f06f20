namespace WitherAdvisor.Plans.Search;

/// <summary>A plan tried in the search. Hours count from loading.</summary>
/// <param name="Air">What is held before cooling.</param>
/// <param name="TurnHours">When the leaf is turned; none before its turns are planned.</param>
/// <param name="HeatedHoursToTarget">Hours to the target if the main air were kept on; null where it is never reached.</param>
/// <param name="CoolingHours">Last hours on ambient air before the leaf is ready.</param>
/// <param name="CoolingDelayHours">How much later it is ready for them.</param>
/// <param name="SurfaceEndHour">When the surface stage ends: on the last quarter hour before the first layer is dry, so that air meant for wet leaf never blows on dry.</param>
/// <param name="ToTargetHour">When it reaches its target; infinite for never.</param>
/// <param name="ReadyHour">When the leaf is ready: at its target, or where that comes too late, as near to it as time allows.</param>
/// <param name="WaterLeftDryBasis">Water above the target when it is called ready, kg per kg dry matter.</param>
/// <param name="StopHour">When it goes to rolling: later than it is ready where it has to wait.</param>
/// <param name="LargestSpreadWetBasis">Of tissue moisture between layers.</param>
/// <param name="HeatKWhPerM2">Heat mixed in.</param>
/// <param name="Cost">What the soft terms add up to: see <see cref="PlanCost"/>.</param>
/// <param name="Broken">The hard limit it breaks; null where it breaks none.</param>
internal sealed record Candidate(
    HeldAir Air,
    IReadOnlyList<double> TurnHours,
    double? HeatedHoursToTarget,
    double CoolingHours,
    double CoolingDelayHours,
    double SurfaceEndHour,
    double ToTargetHour,
    double ReadyHour,
    double WaterLeftDryBasis,
    double StopHour,
    double LargestSpreadWetBasis,
    double HeatKWhPerM2,
    double Cost,
    LimitNotice? Broken)
{
    /// <summary>When the heat is taken off.</summary>
    public double HeatOffHour => ReadyHour - CoolingHours;
}

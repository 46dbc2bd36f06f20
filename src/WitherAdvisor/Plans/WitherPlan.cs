namespace WitherAdvisor.Plans;

/// <summary>What to set, for how long, when to turn and when to stop. Hours count from loading.</summary>
/// <param name="Stages">In order, without gaps, from where the wither stands (hour 0: loading) to <paramref name="StopHour"/>; none where leaf under way is ready now.</param>
/// <param name="Settings">Air to set hour by hour as the ambient air changes: one at the start of each stage and at each whole hour.</param>
/// <param name="TurnIntervalHours">Whole hours between turns; null where they are not even, or none is needed before the stop.</param>
/// <param name="TurnHours">Hours at which the leaf is turned, those behind left out.</param>
/// <param name="StopHour">When the leaf goes to rolling.</param>
/// <param name="FanShare">Share of the trough's full airflow before cooling; each stage states its own.</param>
/// <param name="MeanHygrometricDifferenceK">Mean under the mesh before cooling, K.</param>
/// <param name="HeatKWh">Heat mixed in over the whole wither, kWh.</param>
/// <param name="LargestSpreadWetBasis">Largest spread of tissue moisture between layers at any time, wet basis.</param>
/// <param name="Outturn">Withered weight over green weight as weighed with its surface water, fraction.</param>
/// <param name="OutturnOfLeaf">Withered weight over the weight of green leaf without its surface water, fraction.</param>
public sealed record WitherPlan(
    IReadOnlyList<PlanStage> Stages,
    IReadOnlyList<AirSetting> Settings,
    int? TurnIntervalHours,
    IReadOnlyList<double> TurnHours,
    double StopHour,
    double FanShare,
    double MeanHygrometricDifferenceK,
    double HeatKWh,
    double LargestSpreadWetBasis,
    double Outturn,
    double OutturnOfLeaf)
{
    /// <summary>Share of the time that the fan runs before cooling; each stage states its own.</summary>
    public double RunShare { get; init; } = 1;

    private readonly double? readyHour;

    /// <summary>When the leaf is ready; from then to the stop it is held.</summary>
    public double ReadyHour
    {
        get => readyHour ?? StopHour;
        init => readyHour = value;
    }

    /// <summary>The hour to which held leaf keeps within a point of its target; null where none is held, or where it keeps longer than air is known.</summary>
    public double? HeldWellToHour { get; init; }

    /// <summary>Heat for each kg of made tea, kWh/kg; null in advice kept from before it was reckoned.</summary>
    public double? HeatKWhPerKgMadeTea { get; init; }

    /// <summary>What the fan draws over the whole wither, kWh; null where nobody said what it draws.</summary>
    public double? FanKWh { get; init; }

    /// <summary>What the largest spread would be with one turn more, wet basis; null where no more fit in.</summary>
    public double? SpreadWithOneMoreTurnWetBasis { get; init; }
}

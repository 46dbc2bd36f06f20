using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Search;

/// <summary>All that a plan is chosen for. Hours count from loading, wherever the wither stands.</summary>
/// <param name="Start">Where the wither stands: leaf just loaded, or a bed under way.</param>
/// <param name="Heat">The heat that there is.</param>
/// <param name="LoadKgPerM2">Leaf with its surface water as it was loaded, per area of mesh: all of it, what is still to be laid on too.</param>
/// <param name="ShortestHours">Earliest stop that the chemical wither allows.</param>
/// <param name="LongestHours">Latest stop that it allows.</param>
/// <param name="ReadyByHour">When rolling wants the leaf; null where any time will do.</param>
internal sealed record PlanProblem(
    WitherState Start,
    double LoadKgPerM2,
    Trough Trough,
    WitherStyle Style,
    HeatSupply Heat,
    AmbientForecast Ambient,
    WitherCoefficients Coefficients,
    double ShortestHours,
    double LongestHours,
    double? ReadyByHour)
{
    /// <summary>Share of the wanted difference that a sparing site goes without (a starting value, no published source).</summary>
    public const double SparedShare = 0.4;

    /// <summary>Share of the way to the ceiling that a site in haste goes (a starting value, no published source).</summary>
    public const double HastenedShare = 0.5;

    private const double MadeTeaMoistureWetBasis = 0.03;

    /// <summary>For leaf just loaded.</summary>
    public PlanProblem(
        LeafState leaf, double loadKgPerM2, Trough trough, WitherStyle style, HeatSupply heat, AmbientForecast ambient,
        WitherCoefficients coefficients, double shortestHours, double longestHours, double? readyByHour)
        : this(
            WitherState.AtLoading(leaf), loadKgPerM2, trough, style, heat, ambient, coefficients, shortestHours, longestHours,
            readyByHour)
    {
    }

    /// <summary>Lots still to be laid on, in order.</summary>
    public IReadOnlyList<LaidLot> Later { get; init; } = [];

    /// <summary>When all leaf is on: heat and turns begin there, not before.</summary>
    public double LoadedHour => Math.Max(Later.Count > 0 ? Later[^1].Hour : Start.Hour, Start.Hour);

    /// <summary>From which the next turn is counted: the last one, else when all leaf is on.</summary>
    public double TurnsFromHour => Later.Count > 0 ? Math.Max(LoadedHour, Start.LastTurnHour) : Start.LastTurnHour;

    /// <summary>The leaf at loading, the mean of all lots.</summary>
    public LeafState Leaf => Later.Count > 0 ? MixedLeaf.Of(Start.Bed.Loaded, LyingDryMassKgPerM2, Later) : Start.Bed.Loaded;

    /// <summary>M: dry matter per area of all leaf, kg/m².</summary>
    public double DryMassKgPerM2 => LyingDryMassKgPerM2 + Later.Sum(lot => lot.DryMassKgPerM2);

    /// <summary>Of the leaf that lies there.</summary>
    private double LyingDryMassKgPerM2 => Start.Bed.Loaded.DryMatterKg(LyingKgPerM2);

    private double LyingKgPerM2 => LoadKgPerM2 - Later.Sum(lot => lot.LoadKgPerM2);

    /// <summary>Water in and on the leaf at which it is ready, kg per kg dry matter.</summary>
    public double TargetDryBasis => Moisture.DryBasis(Style.TargetMoistureWetBasis);

    /// <summary>Whether air meant for wet leaf may still be held.</summary>
    public bool IsInSurfaceStage =>
        Start.Stage is StageKind.SurfaceDrying or StageKind.Loading
        && (DryingTrace.HasSurfaceWater(Start.Bed) || Later.Any(lot => lot.Leaf.SurfaceWaterKgPerKg > 0));

    /// <summary>Of the water that the wither drives off, the share that is still to go; 1 at loading.</summary>
    public double ShareToGo
    {
        get
        {
            double atLoading = WaterToGo(BedState.AtLoading(Start.Bed.Loaded));
            return Start.IsUnderWay && atLoading > 0 ? Math.Clamp(WaterToGo(Start.Bed) / atLoading, 0, 1) : 1;
        }
    }

    /// <summary>The air that people hold by the plan so far, from where the wither stands; null where there is none, or no more.</summary>
    public HeldAir? AirInHand => Start switch
    {
        { InHand: { } held, Stage: StageKind.Cooling } => new(0, 0, held.FanShare),
        { InHand: { } held } => IsInSurfaceStage ? held : held with { SurfaceDifferenceK = held.DifferenceK },
        _ => null,
    };

    /// <summary>Hygrometric difference that the site wants at its pace, K: sparing takes some heat off, fast goes some way to the ceiling.</summary>
    public double WantedDifferenceK
    {
        get
        {
            double wanted = Math.Min(Style.WantedHygrometricDifferenceK, Style.HygrometricDifferenceCeilingK);
            return Style.Pace switch
            {
                WitherPace.Sparing => (1 - SparedShare) * wanted,
                WitherPace.Fast => wanted + HastenedShare * (Style.HygrometricDifferenceCeilingK - wanted),
                _ => wanted,
            };
        }
    }

    /// <summary>Before this hour leaf is neither rolled nor wanted; a wish does not outdo its longest time.</summary>
    public double EarliestStop => Math.Max(Math.Max(ShortestHours, LoadedHour), Math.Min(ReadyByHour ?? double.NegativeInfinity, LongestHours));

    /// <summary>Made tea that the leaf comes to, kg/m², at 3 % moisture (common practice, no published source).</summary>
    public double MadeTeaKgPerM2 => DryMassKgPerM2 / (1 - MadeTeaMoistureWetBasis);

    /// <summary>The warmest plenum that may be asked for at an hour, °C: under the ceiling, and no more than the heater gives.</summary>
    public double WarmestPlenumC(double hour, AirState ambient, double fanShare) => Math.Min(
        HardLimits.SetPointCeilingC(Style), Heat.WarmestPlenumC(hour, ambient, Trough.AirflowM3PerSM2 * fanShare));

    /// <summary>
    /// Whether a plan's stop says no more than that a bed under way is ready: nothing later would be better, however far
    /// it has dried.
    /// </summary>
    public bool IsReadyNow(double stopHour) => Start.IsUnderWay && Later.Count == 0 && stopHour <= Start.Hour && WaterToGo(Start.Bed) <= 0;

    public BedSetup Bed(SaturationTable saturation, BedResolution resolution) => new(
        Start.Bed, LyingDryMassKgPerM2, Trough.AirflowM3PerSM2, Ambient.PressurePa, saturation, Coefficients,
        resolution.Layers, resolution.LongestStepS)
    {
        Later = Later,
    };

    /// <summary>The bed when all leaf is on.</summary>
    public BedSetup LoadedBed(SaturationTable saturation, BedResolution resolution, BedState from) =>
        Bed(saturation, resolution) with { Start = from, DryMassKgPerM2 = DryMassKgPerM2, Later = [] };

    /// <summary>A share of every lot.</summary>
    public PlanProblem Spread(double share) => this with
    {
        LoadKgPerM2 = LoadKgPerM2 * share,
        Later = [.. Later.Select(lot => lot with { LoadKgPerM2 = lot.LoadKgPerM2 * share })],
    };

    /// <summary>The same weights of other leaf.</summary>
    public PlanProblem HadItBeen(Func<LeafState, LeafState> other) => this with
    {
        Start = Start.HadItBeen(other(Start.Bed.Loaded)),
        Later = [.. Later.Select(lot => lot with { Leaf = other(lot.Leaf) })],
    };

    /// <summary>The same leaf, less the water on it.</summary>
    public PlanProblem WithoutSurfaceWater()
    {
        LaidLot[] dry = [.. Later.Select(lot => lot with { LoadKgPerM2 = lot.LoadKgPerM2 / (1 + lot.Leaf.SurfaceWaterKgPerKg) })];
        return (this with
        {
            LoadKgPerM2 = LyingKgPerM2 / (1 + Start.Bed.Loaded.SurfaceWaterKgPerKg) + dry.Sum(lot => lot.LoadKgPerM2),
            Later = dry,
        }).HadItBeen(leaf => leaf with { SurfaceWaterKgPerKg = 0 });
    }

    private double WaterToGo(BedState bed) => bed.TissueDryBasis.Average() + bed.SurfaceDryBasis.Average() - TargetDryBasis;
}

using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Uncertainty;

/// <summary>The chosen plan, as written, over cases that may be true: its air, turns and fan share held.</summary>
internal sealed class UncertainWither(CandidateTrial trial, Candidate chosen, UncertainSpreads spreads)
{
    private const double DriestTissueWetBasis = 0.5;
    private const double WettestTissueWetBasis = 0.9;

    private readonly PlanProblem problem = trial.Problem;

    /// <summary>Where the plan begins, hours from loading.</summary>
    public double StartHour => problem.Start.Hour;

    /// <summary>Dries the leaf of a case, at least to an hour.</summary>
    public EnsembleMember Dry(UncertainDraw draw, double stopHour)
    {
        BedSetup setup = Bed(draw);
        double heldK = draw.PlenumSchedule * UncertainSpreads.HeldAirK;
        double nightK = draw.NightAir * spreads.NightAirK;
        double horizon = problem.Ambient.LastHour;
        HeldAir air = chosen.Air;
        var schedule = new TrialSchedule(
            trial.Surface(air).MissedBy(heldK, nightK),
            trial.Main(air).MissedBy(heldK, nightK),
            new TurnRule.AtHours(chosen.TurnHours), problem.TargetDryBasis, stopHour, horizon, chosen.SurfaceEndHour,
            Loading: trial.Loading.MissedBy(heldK, nightK), LoadedHour: problem.LoadedHour);
        DryingTrace trace = TrialWither.Run(setup, schedule);
        double? ready = trace.TargetHour is { } hour ? hour + chosen.CoolingDelayHours : null;
        double dryMass = setup.DryMassKgPerM2 + setup.Later.Sum(lot => lot.DryMassKgPerM2);
        return new(trace, dryMass, ready, Moisture.WetBasis(FinalWater(setup, schedule, trace, nightK)));
    }

    /// <summary>Leaf that is ready by the plan's clock waits on slow air to the stop, whatever a case's own leaf does.</summary>
    private double FinalWater(BedSetup setup, TrialSchedule schedule, DryingTrace trace, double nightK)
    {
        double stop = schedule.RunAtLeastTo;
        if (stop <= chosen.ReadyHour)
        {
            return trace.WaterDryBasis(Math.Max(stop - chosen.CoolingDelayHours, 0));
        }

        PlenumSchedule held = trial.Main(StageLine.Holding(chosen)).MissedBy(0, nightK);
        double heldFrom = Math.Max(chosen.ReadyHour - chosen.CoolingDelayHours, problem.Start.Hour);
        return TrialWither.Run(setup, schedule with { Held = held, HeldFromHour = heldFrom }).WaterDryBasis(stop);
    }

    /// <summary>The leaf of a case, the mean of all lots.</summary>
    public LeafState Leaf(UncertainDraw draw) => OfCase(problem.Leaf, draw);

    /// <summary>What is not known of one lot is not known of the others either: all lie on the same side.</summary>
    private LeafState OfCase(LeafState leaf, UncertainDraw draw) => new(
        Math.Clamp(leaf.TissueMoistureWetBasis + draw.TissueMoisture * spreads.TissueMoistureWetBasis, DriestTissueWetBasis, WettestTissueWetBasis),
        Math.Max(leaf.SurfaceWaterKgPerKg + draw.SurfaceWater * spreads.SurfaceWaterKgPerKg, 0));

    /// <summary>The coefficients of a case.</summary>
    public WitherCoefficients Coefficients(UncertainDraw draw)
    {
        WitherCoefficients c = problem.Coefficients;
        CoefficientSpreads of = spreads.Coefficients;
        return c with
        {
            CuticularConductanceMPerS = c.CuticularConductanceMPerS * Factor(of.CuticularConductance, draw.CuticularConductance),
            BoundaryLayerConductanceMPerS = c.BoundaryLayerConductanceMPerS * Factor(of.BoundaryLayerConductance, draw.BoundaryLayerConductance),
            SurfaceCapacityKgPerKg = c.SurfaceCapacityKgPerKg * Factor(of.SurfaceCapacity, draw.SurfaceCapacity),
        };
    }

    /// <summary>Airflow of a case, m³/s·m².</summary>
    public double AirflowM3PerSM2(UncertainDraw draw) => problem.Trough.AirflowM3PerSM2 * chosen.Air.FanShare * Airflow(draw);

    private BedSetup Bed(UncertainDraw draw)
    {
        PlanProblem ofCase = problem.HadItBeen(leaf => OfCase(leaf, draw));
        return ofCase.Bed(trial.Saturation, BedResolution.Search) with
        {
            AirflowM3PerSM2 = problem.Trough.AirflowM3PerSM2 * Airflow(draw),
            Coefficients = Coefficients(draw),
        };
    }

    private double Airflow(UncertainDraw draw) => Factor(spreads.Coefficients.Airflow, draw.Airflow);

    private static double Factor(double spread, double draw) => Math.Exp(spread * draw);
}

using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans.Search;
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
        DryingTrace log = TrialWither.Run(setup, new(
            trial.Hold(chosen.SurfaceDifferenceK).MissedBy(heldK, nightK),
            trial.Hold(chosen.DifferenceK).MissedBy(heldK, nightK),
            chosen.TurnIntervalHours, problem.TargetDryBasis, stopHour, horizon,
            SurfaceEndHour: chosen.SurfaceEndHour, LastTurnHour: problem.Start.LastTurnHour))!;
        double? ready = log.TargetHour is { } hour ? hour + chosen.CoolingDelayHours : null;
        double final = Moisture.WetBasis(log.WaterDryBasis(Math.Max(stopHour - chosen.CoolingDelayHours, 0)));
        return new(log, setup.DryMassKgPerM2, ready, final);
    }

    /// <summary>The leaf of a case.</summary>
    public LeafState Leaf(UncertainDraw draw) => new(
        Math.Clamp(problem.Leaf.TissueMoistureWetBasis + draw.TissueMoisture * spreads.TissueMoistureWetBasis, DriestTissueWetBasis, WettestTissueWetBasis),
        Math.Max(problem.Leaf.SurfaceWaterKgPerKg + draw.SurfaceWater * spreads.SurfaceWaterKgPerKg, 0));

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
    public double AirflowM3PerSM2(UncertainDraw draw) => problem.Trough.AirflowM3PerSM2 * FanShare(draw);

    private BedSetup Bed(UncertainDraw draw)
    {
        LeafState leaf = Leaf(draw);
        return problem.Bed(trial.Saturation, BedResolution.Search, FanShare(draw)) with
        {
            Start = problem.Start.Bed.HadItBeen(leaf),
            DryMassKgPerM2 = leaf.DryMatterKg(problem.LoadKgPerM2),
            Coefficients = Coefficients(draw),
        };
    }

    private double FanShare(UncertainDraw draw) => chosen.FanShare * Factor(spreads.Coefficients.Airflow, draw.Airflow);

    private static double Factor(double spread, double draw) => Math.Exp(spread * draw);
}

using WitherAdvisor.Leaf;
using WitherAdvisor.Numerics;
using WitherAdvisor.Troughs;

namespace WitherAdvisor.Advice.Planning;

/// <summary>The chosen plan run over what is uncertain: leaf, coefficients, airflow, the air as set.</summary>
internal sealed class Ensemble
{
    public const int Members = NormalLattice.Count;

    /// <summary>
    /// Standard deviations of the air as it works on the leaf, each as K of plenum dry bulb, mean of a night (from memory).
    /// Where there is heat people hold the hygrometric difference by two thermometers, to about 0.4 K.
    /// </summary>
    private const double HeldAirK = 0.55;

    /// <summary>Without heat the night's own air counts: foretold, its dry bulb and dew point are off by 0.8 K each.</summary>
    private const double ForetoldAirK = 1.1;

    /// <summary>The same where the day before is taken for the night, each off by 1.5 K.</summary>
    private const double UnknownAirK = 2.0;

    private readonly List<EnsembleMember> members = [];
    private readonly Candidate chosen;

    private Ensemble(Candidate chosen) => this.chosen = chosen;

    public IReadOnlyList<EnsembleMember> All => members;

    public static Ensemble Run(CandidateTrial trial, Candidate chosen, WrittenPlan plan, double tissueDeviation, double surfaceDeviation, bool foretold)
    {
        var ensemble = new Ensemble(chosen);
        PlanProblem problem = trial.Problem;
        foreach (double[] draw in NormalLattice.Draws())
        {
            LeafState leaf = Drawn(problem.Leaf, draw[0] * tissueDeviation, draw[1] * surfaceDeviation);
            BedSetup setup = Bed(trial, problem, chosen, leaf, draw);
            double heldK = draw[6] * HeldAirK;
            double ambientK = draw[6] * (foretold ? ForetoldAirK : UnknownAirK);
            double horizon = problem.Night.LastHour;
            WitherLog log = TrialWither.Run(setup, new(
                trial.Hold(chosen.SurfaceDifferenceK).MissedBy(heldK, ambientK),
                trial.Hold(chosen.DifferenceK).MissedBy(heldK, ambientK),
                chosen.TurnIntervalHours, problem.TargetDryBasis, plan.Plan.StopHour, horizon,
                SurfaceEndHour: chosen.SurfaceEndHour))!;
            double? ready = log.TargetHour is { } hour ? hour + chosen.CoolingDelayHours : null;
            double final = Moisture.WetBasis(log.WaterDryBasis(Math.Max(plan.Plan.StopHour - chosen.CoolingDelayHours, 0)));
            ensemble.members.Add(new(log, setup.DryMassKgPerM2, ready, final));
        }

        return ensemble;
    }

    /// <summary>Hours to ready; a member that never gets there lies beyond all that do.</summary>
    public Percentiles ReadyHours()
    {
        double?[] hours = [.. members.Select(member => member.ReadyHour)];
        if (hours.Any(hour => hour is null or <= 0))
        {
            return ByOrder(hours);
        }

        // Rates multiply, so hours are nearer to normal in their logarithm.
        var logarithms = new SmoothQuantiles([.. hours.Select(hour => Math.Log(hour!.Value))]);
        return new(Math.Exp(logarithms.At(0.1)), Math.Exp(logarithms.At(0.5)), Math.Exp(logarithms.At(0.9)));
    }

    public Percentiles FinalMoistureWetBasis()
    {
        var moisture = new SmoothQuantiles([.. members.Select(member => member.FinalMoistureWetBasis)]);
        return new(moisture.At(0.1), moisture.At(0.5), moisture.At(0.9));
    }

    /// <summary>Weights of all leaf per area at an hour, kg/m², lightest first, beside the members that have them.</summary>
    public IReadOnlyList<(double WeightKgPerM2, EnsembleMember Member)> ByWeight(double hour) =>
        [.. members.Select(member => (member.WeightKgPerM2(hour), member)).OrderBy(pair => pair.Item1)];

    private static BedSetup Bed(CandidateTrial trial, PlanProblem problem, Candidate chosen, LeafState leaf, double[] draw)
    {
        WitherCoefficients c = problem.Coefficients;
        CoefficientSpreads spreads = c.Spreads;
        BedSetup setup = problem.Bed(trial.Saturation, BedResolution.Search, chosen.FanShare * Factor(spreads.Airflow, draw[5]));
        return setup with
        {
            Leaf = leaf,
            DryMassKgPerM2 = leaf.DryMatterKg(problem.LoadKgPerM2),
            Coefficients = c with
            {
                SkinConductanceMPerS = c.SkinConductanceMPerS * Factor(spreads.SkinConductance, draw[2]),
                BoundaryConductanceMPerS = c.BoundaryConductanceMPerS * Factor(spreads.BoundaryConductance, draw[3]),
                SurfaceCapacityKgPerKg = c.SurfaceCapacityKgPerKg * Factor(spreads.SurfaceCapacity, draw[4]),
            },
        };
    }

    private static LeafState Drawn(LeafState leaf, double tissue, double surface) => new(
        Math.Clamp(leaf.TissueMoistureWetBasis + tissue, 0.5, 0.9),
        Math.Max(leaf.SurfaceWaterKgPerKg + surface, 0));

    private static double Factor(double spread, double draw) => Math.Exp(spread * draw);

    private static Percentiles ByOrder(IEnumerable<double?> values)
    {
        double[] sorted = [.. values.Select(value => value ?? double.PositiveInfinity).Order()];
        return new(At(sorted, 0.1), At(sorted, 0.5), At(sorted, 0.9));
    }

    private static double? At(double[] sorted, double share)
    {
        double place = share * (sorted.Length - 1);
        int below = (int)place;
        int above = Math.Min(below + 1, sorted.Length - 1);
        return double.IsInfinity(sorted[above]) ? null : sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }
}

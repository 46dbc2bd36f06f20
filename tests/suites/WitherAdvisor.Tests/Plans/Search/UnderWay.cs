using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Writing;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Search;

/// <summary>A plan for leaf just loaded, and the wither that follows it.</summary>
internal sealed class UnderWay
{
    private UnderWay(PlanProblem problem, CandidateTrial trial, Candidate chosen, WrittenPlan written) =>
        (Problem, Trial, Chosen, Written) = (problem, trial, chosen, written);

    public PlanProblem Problem { get; }

    public CandidateTrial Trial { get; }

    public Candidate Chosen { get; }

    public WrittenPlan Written { get; }

    public double StopHour => Written.Plan.StopHour;

    /// <summary>Null where the problem has no plan that keeps its limits.</summary>
    public static UnderWay? By(PlanProblem problem)
    {
        PlanSearch search = PlanSearch.Run(problem);
        WrittenPlan written = PlanWriter.Write(search.Trial, search.Best);
        return BrokenLimits.Of(problem, written).Count == 0 ? new(problem, search.Trial, written.AsWritten, written) : null;
    }

    /// <summary>The same problem seen from an hour before the stop, the plan kept until then.</summary>
    public PlanProblem At(double hour)
    {
        IReadOnlyList<double> turned = [.. Written.Plan.TurnHours.Where(turn => turn < hour)];
        BedSetup setup = Problem.Bed(Trial.Saturation, BedResolution.Shown);
        IReadOnlyList<PlenumStretch> held =
        [
            .. Written.Plan.Stages.Where(stage => stage.FromHour < hour).Select(stage => new PlenumStretch(
                Math.Min(stage.ToHour, hour), new StageLine(Trial, Chosen).AirOf(stage))),
        ];
        BedState bed = FixedWither.Run(setup, Problem.Trough.AreaM2, Problem.TargetDryBasis, held, turned).FinalState;
        PlanStage stage = Written.Plan.Stages.First(stage => stage.ToHour > hour);
        return Problem with { Start = new(bed, turned, stage.Kind, stage.FromHour, Chosen.Air) };
    }

    /// <summary>That a plan made anew at an hour keeps every hard limit and the stop.</summary>
    public void AssertKeptAt(double hour, double toleranceHours)
    {
        PlanProblem now = At(hour);
        PlanSearch search = PlanSearch.Run(now);
        WrittenPlan rest = PlanWriter.Write(search.Trial, search.Best);
        WitherPlan plan = rest.Plan;

        Assert.Empty(BrokenLimits.Of(now, rest));
        Assert.InRange(plan.StopHour, Math.Max(hour, now.ShortestHours), now.LongestHours);
        Assert.InRange(plan.StopHour, StopHour - toleranceHours, StopHour + toleranceHours);
        Assert.Equal(hour, plan.Stages[0].FromHour);
        Assert.Equal(plan.StopHour, plan.Stages[^1].ToHour);
        Assert.All(plan.TurnHours, turn => Assert.InRange(turn, hour, plan.StopHour));
        Assert.Equal(hour, rest.Curve[0].Hour);
        Assert.All(plan.Settings, setting => AssertWithinCeilings(now, plan, setting));
    }

    private static void AssertWithinCeilings(PlanProblem problem, WitherPlan plan, AirSetting setting)
    {
        double surfaceEnd = plan.Stages.FirstOrDefault(stage => stage.Kind == StageKind.SurfaceDrying)?.ToHour ?? problem.Start.Hour;
        Assert.True(setting.Plenum.DryBulbC <= Math.Max(HardLimits.SetPointCeilingC(problem.Style), setting.Ambient.DryBulbC) + 1e-6);
        Assert.True(setting.Plenum.HygrometricDifferenceK <= Math.Max(HardLimits.DifferenceCeilingK(problem.Style, setting.Hour, surfaceEnd), setting.Ambient.HygrometricDifferenceK) + 1e-6);
    }
}

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

    /// <summary>Null where the problem has no plan.</summary>
    public static UnderWay? By(PlanProblem problem)
    {
        PlanSearch search = PlanSearch.Run(problem);
        if (search.Best is not { } chosen)
        {
            return null;
        }

        WrittenPlan written = PlanWriter.Write(search.Trial, chosen);
        return HardLimits.BrokenByWritten(problem, written) is null ? new(problem, search.Trial, chosen, written) : null;
    }

    /// <summary>The same problem seen from an hour before the stop, the plan kept until then.</summary>
    public PlanProblem At(double hour)
    {
        IReadOnlyList<double> turned = [.. Written.Plan.TurnHours.Where(turn => turn < hour)];
        BedSetup setup = Problem.Bed(Trial.Saturation, BedResolution.Shown, Chosen.FanShare);
        IReadOnlyList<PlenumStretch> held =
        [
            .. Written.Plan.Stages.Where(stage => stage.FromHour < hour).Select(stage => new PlenumStretch(
                Math.Min(stage.ToHour, hour), Trial.Hold(stage.WantedHygrometricDifferenceK ?? 0))),
        ];
        BedState bed = FixedWither.Run(setup, Problem.Trough.AreaM2, Problem.TargetDryBasis, held, turned).FinalState;
        PlanStage stage = Written.Plan.Stages.First(stage => stage.ToHour > hour);
        SettingsInHand inHand = new(Chosen.DifferenceK, Chosen.SurfaceDifferenceK, Chosen.FanShare, Chosen.TurnIntervalHours);
        return Problem with { Start = new(bed, turned, stage.Kind, stage.FromHour, inHand) };
    }

    /// <summary>That a plan made anew at an hour keeps every hard limit and the stop.</summary>
    public void AssertKeptAt(double hour, double toleranceHours)
    {
        PlanProblem now = At(hour);
        PlanSearch search = PlanSearch.Run(now);
        Assert.NotNull(search.Best);
        WrittenPlan rest = PlanWriter.Write(search.Trial, search.Best);
        WitherPlan plan = rest.Plan;

        Assert.Null(HardLimits.BrokenByWritten(now, rest));
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
        Assert.True(setting.Plenum.DryBulbC <= HardLimits.PlenumCeilingC(problem.Style) + 1e-6);
        Assert.True(setting.Plenum.HygrometricDifferenceK <= HardLimits.DifferenceCeilingK(problem.Style, setting.Hour, surfaceEnd) + 1e-6);
    }
}

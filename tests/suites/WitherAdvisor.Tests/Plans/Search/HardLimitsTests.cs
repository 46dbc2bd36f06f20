using FsCheck.Xunit;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Search;

/// <summary>Whatever comes in, no plan passes a hard limit.</summary>
public sealed class HardLimitsTests
{
    private const double RoundingK = 1e-6;
    private const double LeafCeilingC = 35;

    /// <summary>What a plan may miss its target by.</summary>
    private const double TargetToleranceWetBasis = 0.03;

    [Property(Arbitrary = [typeof(AnyProblem)], MaxTest = 1_000)]
    public void No_plan_passes_a_hard_limit_without_saying_so(ProblemCase given)
    {
        PlanProblem problem = given.Problem;
        PlanSearch search = PlanSearch.Run(problem);
        WrittenPlan written = PlanWriter.Write(search.Trial, search.Best);
        WitherPlan plan = written.Plan;
        IReadOnlyList<LimitKind> broken = [.. BrokenLimits.Of(problem, written).Select(limit => limit.Limit)];

        Assert.True(plan.StopHour >= Math.Max(problem.ShortestHours, 0), "chemical wither");
        Assert.Equal(plan.StopHour > problem.LongestHours, broken.Contains(LimitKind.LongestTimeSincePlucking));
        Assert.Equal(
            Math.Abs(written.FinalMoistureWetBasis - problem.Style.TargetMoistureWetBasis) > TargetToleranceWetBasis,
            broken.Contains(LimitKind.TargetMoisture));
        Assert.Equal(written.WarmestLeafC > LeafCeilingC, broken.Contains(LimitKind.LeafTemperature));
        Assert.All(plan.Settings, setting => AssertAir(problem.Style, setting));
        AssertStagesFollowOneAnother(plan);
        AssertTurnsCanBeDone(problem.Style, plan);
        Assert.All(written.Curve, point => Assert.True(double.IsFinite(point.LeafWeightKg) && double.IsFinite(point.ExhaustDryBulbC)));
        Assert.All(written.Curve, point => Assert.True(double.IsFinite(point.BottomLeafC!.Value) && double.IsFinite(point.TopLeafC!.Value)));
    }

    /// <summary>What heat makes of the air; ambient air that is warmer or drier by itself is let in as it is.</summary>
    private static void AssertAir(WitherStyle style, AirSetting setting)
    {
        double wet = Math.Max(style.WetLeafHygrometricDifferenceCeilingK, style.HygrometricDifferenceCeilingK);
        double setPoint = Math.Min(style.PlenumCeilingC, WitherStyle.HighestPlenumC) - style.PlenumMarginK;
        Assert.True(setting.Plenum.DryBulbC >= setting.Ambient.DryBulbC - RoundingK, "air is heated, never cooled");
        Assert.True(setting.Plenum.DryBulbC <= Math.Max(setPoint, setting.Ambient.DryBulbC) + RoundingK, "the ceiling less its margin");
        double ceiling = setting.Stage == StageKind.SurfaceDrying ? wet : style.HygrometricDifferenceCeilingK;
        Assert.True(
            setting.Plenum.HygrometricDifferenceK <= Math.Max(ceiling, setting.Ambient.HygrometricDifferenceK) + RoundingK,
            $"{setting} over {ceiling} K");
        Assert.True(setting.HotAirShare is >= -RoundingK and <= 1, "a share");
    }

    private static void AssertTurnsCanBeDone(WitherStyle style, WitherPlan plan)
    {
        Assert.InRange(plan.TurnHours.Count, 0, style.MostTurns);
        Assert.All(plan.TurnHours, hour => Assert.InRange(hour, style.LeastHoursBetweenTurns, plan.StopHour - style.TurnFreeLastHours));
        Assert.All(plan.TurnHours.Zip(plan.TurnHours.Skip(1)), pair => Assert.True(pair.Second - pair.First >= style.LeastHoursBetweenTurns - RoundingK));
        Assert.All(
            plan.Stages.Where(stage => stage.Kind is StageKind.Cooling or StageKind.Holding),
            stage => Assert.DoesNotContain(plan.TurnHours, hour => hour > stage.FromHour));
    }

    private static void AssertStagesFollowOneAnother(WitherPlan plan)
    {
        double hour = 0;
        foreach (PlanStage stage in plan.Stages)
        {
            Assert.Equal(hour, stage.FromHour);
            Assert.True(stage.ToHour > stage.FromHour);
            hour = stage.ToHour;
        }

        Assert.Equal(plan.StopHour, hour);
    }
}

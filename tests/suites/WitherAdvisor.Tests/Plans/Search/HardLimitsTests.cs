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

    /// <summary>What a plan may miss its target by.</summary>
    private const double TargetToleranceWetBasis = 0.03;

    [Property(Arbitrary = [typeof(AnyProblem)], MaxTest = 1_000)]
    public void No_plan_passes_a_hard_limit(ProblemCase given)
    {
        PlanProblem problem = given.Problem;
        PlanSearch search = PlanSearch.Run(problem);
        if (search.Best is not { } chosen)
        {
            Assert.NotNull(search.Nearest?.Broken);
            return;
        }

        WrittenPlan written = PlanWriter.Write(search.Trial, chosen);
        WitherPlan plan = written.Plan;

        Assert.InRange(plan.StopHour, Math.Max(problem.ShortestHours, 0), problem.LongestHours);
        Assert.All(plan.Settings, setting => AssertAir(problem.Style, setting));
        // A plan that is found to miss once it is written is refused, as the advice does; the search cannot know it.
        double miss = Math.Abs(written.FinalMoistureWetBasis - problem.Style.TargetMoistureWetBasis);
        Assert.Equal(miss > TargetToleranceWetBasis, HardLimits.BrokenByWritten(problem, written) is not null);
        AssertStagesFollowOneAnother(plan);
        Assert.All(plan.TurnHours, hour => Assert.InRange(hour, 1, plan.StopHour));
        Assert.All(written.Curve, point => Assert.True(double.IsFinite(point.LeafWeightKg) && double.IsFinite(point.ExhaustDryBulbC)));
    }

    private static void AssertAir(WitherStyle style, AirSetting setting)
    {
        double wet = Math.Max(style.WetLeafHygrometricDifferenceCeilingK, style.HygrometricDifferenceCeilingK);
        Assert.True(setting.Plenum.DryBulbC <= WitherStyle.HighestPlenumC + RoundingK, "35 °C");
        Assert.True(setting.Plenum.DryBulbC <= style.PlenumCeilingC + RoundingK, "the site's ceiling");
        Assert.True(setting.Plenum.DryBulbC >= setting.Ambient.DryBulbC - RoundingK, "air is heated, never cooled");
        double ceiling = setting.Stage == StageKind.SurfaceDrying ? wet : style.HygrometricDifferenceCeilingK;
        Assert.True(setting.Plenum.HygrometricDifferenceK <= ceiling + RoundingK, $"{setting} over {ceiling} K");
        Assert.True(setting.HotAirShare is >= -RoundingK and <= 1, "a share");
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

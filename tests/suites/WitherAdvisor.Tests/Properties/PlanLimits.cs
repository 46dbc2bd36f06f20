using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;
using Xunit;

namespace WitherAdvisor.Tests.Properties;

/// <summary>The limits that no plan passes, read off an advice as a person would read it.</summary>
internal static class PlanLimits
{
    private const double RoundingK = 1e-6;

    private const double RoundingHours = 1e-9;

    /// <summary>How far from the target a plan may stop; site practice, nothing published.</summary>
    private const double TargetTolerance = 0.03;

    public static void AssertKept(AdviceRequest request, AdviceOutcome.Advised advice)
    {
        WitherStyle style = request.Site.Style;
        Batch batch = request.Batch;
        double sinceLast = advice.Plan.StopHour + (batch.LoadedAt - batch.PluckedTo).TotalHours;
        double sinceFirst = advice.Plan.StopHour + (batch.LoadedAt - batch.PluckedFrom).TotalHours;
        double shortest = advice.KnownLeaf.Spell.Kind == SpellKind.DryWindy
            ? style.ShortestHoursSincePluckingInDryWindySpell
            : style.ShortestHoursSincePlucking;

        Assert.True(sinceLast >= shortest - RoundingHours, $"{sinceLast} h since plucking, under {shortest}");
        Assert.True(advice.IsLeastBad || sinceFirst <= style.LongestHoursSincePlucking + RoundingHours, $"{sinceFirst} h since plucking, over {style.LongestHoursSincePlucking}");
        Assert.True(advice.IsLeastBad || Math.Abs(advice.Curve[^1].MeanMoistureWetBasis - style.TargetMoistureWetBasis) <= TargetTolerance);
        Assert.All(advice.Plan.Settings, setting => AssertKept(style, setting));
    }

    private static void AssertKept(WitherStyle style, AirSetting setting)
    {
        double ceilingK = setting.Stage == StageKind.SurfaceDrying
            ? Math.Max(style.WetLeafHygrometricDifferenceCeilingK, style.HygrometricDifferenceCeilingK)
            : style.HygrometricDifferenceCeilingK;
        double setPointC = Math.Min(style.PlenumCeilingC, WitherStyle.HighestPlenumC) - style.PlenumMarginK;
        Assert.True(setting.Plenum.DryBulbC <= Math.Max(setPointC, setting.Ambient.DryBulbC) + RoundingK, $"{setting} over {setPointC} °C");
        Assert.True(
            setting.Plenum.HygrometricDifferenceK <= Math.Max(ceilingK, setting.Ambient.HygrometricDifferenceK) + RoundingK,
            $"{setting} over {ceilingK} K");
        Assert.True(setting.Plenum.DryBulbC >= setting.Ambient.DryBulbC - RoundingK, "air is heated, never cooled");
    }
}

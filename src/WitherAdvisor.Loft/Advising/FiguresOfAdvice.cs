using WitherAdvisor.Advice;
using WitherAdvisor.Plans;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Loft.Advising;

/// <summary>The figures of an advice that logs and exports tell, rounded as answers round them.</summary>
public static class FiguresOfAdvice
{
    public static AdviceFigures Of(KeptAdvice kept, AdviceOutcome outcome)
    {
        var advised = outcome as AdviceOutcome.Advised;
        var set = advised?.Plan.Settings[0];
        var leaf = outcome.Leaf;
        return new(
            kept.BatchId, kept.MadeAt, kept.Id, kept.ModelVersion, outcome.CoefficientSet,
            leaf is null ? null : KeptWord.Of(leaf.Spell.Kind),
            To(2, leaf?.Spell.RainLast72HoursMm),
            To(2, leaf?.Spell.RainLast10DaysMm),
            To(3, leaf?.Spell.WaterStress),
            To(2, leaf?.Spell.DryingPowerKPaMPerS),
            To(4, leaf?.SurfaceWaterKgPerKg.Value),
            To(4, leaf?.SurfaceWaterKgPerKg.StandardDeviation),
            Percent(leaf?.TissueMoistureWetBasis.Value),
            Percent(leaf?.TissueMoistureWetBasis.StandardDeviation),
            To(2, advised?.Plan.StopHour),
            To(2, set?.Plenum.DryBulbC),
            To(2, set?.Plenum.HygrometricDifferenceK),
            MeanHoursBetweenTurns(advised?.Plan),
            To(2, advised?.ReadyHours.P10),
            To(2, advised?.ReadyHours.P50),
            To(2, advised?.ReadyHours.P90),
            Percent(advised?.Plan.Outturn));
    }

    private static double? Percent(double? fraction) => To(2, fraction is { } known ? Math.Round(known * 100, 10) : null);

    // Adding 0 turns −0, which rounding makes of small negative numbers, into 0.
    private static double? To(int places, double? value) => value is { } known ? Math.Round(known, places) + 0.0 : null;

    /// <summary>From loading on; null where no turn is advised.</summary>
    private static double? MeanHoursBetweenTurns(WitherPlan? plan) => plan?.TurnHours is { Count: > 0 } turns ? turns[^1] / turns.Count : null;
}

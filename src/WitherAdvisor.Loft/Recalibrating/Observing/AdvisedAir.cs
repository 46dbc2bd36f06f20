using WitherAdvisor.Advice;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Loft.Records.Opening;
using WitherAdvisor.Outcomes;
using WitherAdvisor.Plans;

namespace WitherAdvisor.Loft.Recalibrating.Observing;

/// <summary>Air as it was advised, for withers of which nobody wrote down what was set.</summary>
public static class AdvisedAir
{
    /// <summary>By the hour from the answer; by its first setting where only its figures are kept. Empty where there was none.</summary>
    public static IReadOnlyList<AirHeld> Of(KeptAdvice? kept, AdviceFigures? figures)
    {
        if (kept is not null && AdviceRecords.Open(kept) is OpenedRecord.Readable { Record.Outcome: AdviceOutcome.Advised advised })
        {
            return [.. advised.Plan.Settings.Select(Setting)];
        }

        return figures is { AdvisedDryBulbC: { } dryBulbC, AdvisedHygrometricDifferenceK: { } differenceK }
            ? [new(0, dryBulbC, null, differenceK, null)]
            : [];
    }

    /// <summary>To the hundredth, as people were told it.</summary>
    private static AirHeld Setting(AirSetting setting) => new(
        Math.Round(setting.Hour, 2), Math.Round(setting.Plenum.DryBulbC, 2), null, Math.Round(setting.Plenum.HygrometricDifferenceK, 2), null);
}

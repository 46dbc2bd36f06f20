using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>What follows from a batch and its outcome together; null where something of it is unknown.</summary>
internal sealed record OutcomeComputed(double? HoursOnTrough, double? OutturnPercent, double? OutturnOfLeafPercent)
{
    public static OutcomeComputed Of(StoredBatch batch, StoredOutcome outcome, AdviceFigures? advice) => new(
        (batch.UnloadedAt - batch.Batch.LoadedAt)?.TotalHours,
        Percent.Of(outcome.Outcome.OutturnOfGreen(batch.Batch.GreenWeightKg)),
        Percent.Of(outcome.Outcome.OutturnOfLeaf(batch.Batch.GreenWeightKg, SurfaceWaterKgPerKg(batch, advice))));

    /// <summary>As measured, else as the advice estimated it.</summary>
    public static double? SurfaceWaterKgPerKg(StoredBatch batch, AdviceFigures? advice) =>
        batch.Batch.MeasuredSurfaceWaterKgPerKg ?? advice?.SurfaceWaterKgPerKg;
}

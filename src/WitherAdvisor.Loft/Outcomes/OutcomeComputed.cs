using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.Loft.Outcomes;

/// <summary>What follows from a batch and its outcome together; null where something of it is unknown.</summary>
/// <param name="Outturn">Withered weight over green weight as weighed, a fraction.</param>
/// <param name="OutturnOfLeaf">Withered weight over that of the green leaf without its surface water, a fraction.</param>
public sealed record OutcomeComputed(double? HoursOnTrough, double? Outturn, double? OutturnOfLeaf)
{
    public static OutcomeComputed Of(StoredBatch batch, StoredOutcome outcome, AdviceFigures? advice) => new(
        (batch.UnloadedAt - batch.Batch.LoadedAt)?.TotalHours,
        outcome.Outcome.OutturnOfGreen(batch.Batch.GreenWeightKg),
        outcome.Outcome.OutturnOfLeaf(batch.Batch.GreenWeightKg, SurfaceWaterKgPerKg(batch, advice)));

    /// <summary>As measured, else as the advice estimated it.</summary>
    public static double? SurfaceWaterKgPerKg(StoredBatch batch, AdviceFigures? advice) =>
        batch.Batch.MeasuredSurfaceWaterKgPerKg ?? advice?.SurfaceWaterKgPerKg;
}

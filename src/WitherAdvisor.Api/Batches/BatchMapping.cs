using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Api.Batches;

/// <summary>A batch between request, domain and store.</summary>
internal static class BatchMapping
{
    public static Batch ToDomain(BatchRequest input) => new(
        input.Label.ToDomain(),
        input.PluckedFrom,
        input.PluckedTo,
        input.LoadedAt,
        input.GreenWeightKg,
        input.SurfaceWater?.MeasuredKgPerKg,
        input.SurfaceWater?.Feel,
        Percent.ToFraction(input.MeasuredMoistureWetBasisPercent),
        input.ReadyBy);

    public static BatchRequest ToRequest(Batch batch) => new()
    {
        Label = LabelRequest.Of(batch.Label),
        PluckedFrom = batch.PluckedFrom,
        PluckedTo = batch.PluckedTo,
        LoadedAt = batch.LoadedAt,
        GreenWeightKg = batch.GreenWeightKg,
        SurfaceWater = batch.MeasuredSurfaceWaterKgPerKg is null && batch.SurfaceFeel is null
            ? null
            : new() { MeasuredKgPerKg = batch.MeasuredSurfaceWaterKgPerKg, Feel = batch.SurfaceFeel },
        MeasuredMoistureWetBasisPercent = Percent.Of(batch.MeasuredMoistureWetBasis),
        ReadyBy = batch.ReadyBy,
    };

    public static BatchStatus ToStatus(BatchEnd? ended) => ended switch
    {
        null => BatchStatus.Running,
        BatchEnd.Unloaded => BatchStatus.Unloaded,
        BatchEnd.Cancelled => BatchStatus.Cancelled,
        BatchEnd.Mixed => BatchStatus.Mixed,
        _ => throw new ArgumentOutOfRangeException(nameof(ended), ended, "No status for this end."),
    };

    public static BatchResponse ToResponse(StoredBatch stored) => new(stored, ToRequest(stored.Batch));
}

using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Api.Batches;

/// <summary>A batch between request, domain and store.</summary>
internal static class BatchMapping
{
    /// <summary>The members of a batch tell of its first lot; without further lots, of all its leaf.</summary>
    public static Batch ToDomain(BatchRequest input)
    {
        Batch first = First(input);
        return input.Lots is { Count: > 0 } further ? first.WithLots(lots => [.. lots, .. further.Select(LotMapping.ToDomain)]) : first;
    }

    private static Batch First(BatchRequest input) => new(
        input.Label.ToDomain(),
        input.PluckedFrom,
        input.PluckedTo,
        input.LoadedAt,
        input.GreenWeightKg,
        input.SurfaceWater?.MeasuredKgPerKg,
        input.SurfaceWater?.Feel,
        Percent.ToFraction(input.MeasuredMoistureWetBasisPercent),
        input.ReadyBy);

    public static BatchRequest ToRequest(Batch batch)
    {
        LeafLot first = batch.EachLot[0];
        return new()
        {
            Label = LabelRequest.Of(first.Label ?? batch.Label),
            PluckedFrom = first.PluckedFrom ?? batch.PluckedFrom,
            PluckedTo = first.PluckedTo ?? batch.PluckedTo,
            LoadedAt = first.LoadedAt,
            GreenWeightKg = first.GreenWeightKg,
            SurfaceWater = SurfaceWaterRequest.Of(first.MeasuredSurfaceWaterKgPerKg, first.SurfaceFeel),
            MeasuredMoistureWetBasisPercent = Percent.Of(first.MeasuredMoistureWetBasis),
            ReadyBy = batch.ReadyBy,
            Lots = batch.Lots.Count == 0 ? null : [.. batch.Lots.Skip(1).Select(LotMapping.ToRequest)],
        };
    }

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

using WitherAdvisor.Fields;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Batches;

/// <summary>A lot between request and domain.</summary>
internal static class LotMapping
{
    public static LeafLot ToDomain(LotRequest input) => new(
        input.LoadedAt,
        input.GreenWeightKg,
        input.Label?.ToDomain(),
        input.PluckedFrom,
        input.PluckedTo,
        input.SurfaceWater?.MeasuredKgPerKg,
        input.SurfaceWater?.Feel,
        Percent.ToFraction(input.MeasuredMoistureWetBasisPercent),
        input.Status == LotStatus.Expected);

    public static LotRequest ToRequest(LeafLot lot) => new()
    {
        LoadedAt = lot.LoadedAt,
        GreenWeightKg = lot.GreenWeightKg,
        Status = lot.IsExpected ? LotStatus.Expected : LotStatus.Laid,
        Label = lot.Label is { } label ? LabelRequest.Of(label) : null,
        PluckedFrom = lot.PluckedFrom,
        PluckedTo = lot.PluckedTo,
        SurfaceWater = SurfaceWaterRequest.Of(lot.MeasuredSurfaceWaterKgPerKg, lot.SurfaceFeel),
        MeasuredMoistureWetBasisPercent = Percent.Of(lot.MeasuredMoistureWetBasis),
    };
}

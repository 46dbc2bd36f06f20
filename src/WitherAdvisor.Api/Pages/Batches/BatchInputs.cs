using WitherAdvisor.Api.Batches;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Pages.Batches;

/// <summary>A batch as the interface takes it, so that page and interface share one intake.</summary>
internal static class BatchInputs
{
    public static BatchOnTroughInput Of(string troughId, Batch batch)
    {
        BatchInput input = BatchMapping.ToInput(batch);
        return new()
        {
            Trough = troughId,
            Label = input.Label,
            PluckedFrom = input.PluckedFrom,
            PluckedTo = input.PluckedTo,
            LoadedAt = input.LoadedAt,
            GreenWeightKg = input.GreenWeightKg,
            SurfaceWater = input.SurfaceWater,
            MeasuredMoistureWetBasisPercent = input.MeasuredMoistureWetBasisPercent,
            ReadyBy = input.ReadyBy,
        };
    }
}

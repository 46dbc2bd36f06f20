using FsCheck;
using FsCheck.Fluent;
using WitherAdvisor.Advice;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Simulations;
using WitherAdvisor.Sites;
using WitherAdvisor.Tests.Air;

namespace WitherAdvisor.Tests.Advice;

/// <summary>Withers as a loft may have them: fixed ones, and batches to be advised on.</summary>
public static class AnyWither
{
    public static Arbitrary<SimulationRequest> Fixed() => FixedWithers.ToArbitrary();

    public static Arbitrary<AdviceRequest> Batch() => Batches.ToArbitrary();

    private static Gen<SimulationRequest> FixedWithers =>
        from batch in Batches
        from plenumC in AnyAir.Between(20, 35)
        from turnEvery in Gen.Choose(1, 6)
        from fanShare in AnyAir.Between(0.5, 1)
        select new SimulationRequest(
            batch.Site, batch.Trough, batch.Batch.GreenWeightKg,
            new LeafState(batch.Batch.MeasuredMoistureWetBasis!.Value, batch.Batch.MeasuredSurfaceWaterKgPerKg!.Value),
            batch.Batch.LoadedAt, [.. batch.Readings.TakeLast(1), .. batch.Forecast],
            [new(30, PlenumDryBulbC: plenumC)],
            [.. Enumerable.Range(1, 30).Where(hour => hour % turnEvery == 0).Select(hour => (double)hour)],
            fanShare, batch.Coefficients);

    private static Gen<AdviceRequest> Batches =>
        from dryBulbC in AnyAir.Between(10, 30)
        from nightK in AnyAir.Between(0, 6)
        from humidity in AnyAir.Between(0.45, 0.98)
        from moisture in AnyAir.Between(0.73, 0.82)
        from surface in Gen.Frequency((1, Gen.Constant(0.0)), (2, AnyAir.Between(0, 0.3)))
        from load in AnyAir.Between(15, 33)
        from elevationM in AnyAir.Between(0, 2_400)
        from style in Gen.Elements(WitherStyle.Short, WitherStyle.Long)
        from readyBy in Gen.Frequency((1, Gen.Constant<double?>(null)), (1, AnyAir.Between(6, 16).Select(hour => (double?)hour)))
        select Cooling(
            InventedBatch.Measured(dryBulbC, humidity, moisture, surface, load, elevationM, style), dryBulbC, nightK, humidity, readyBy);

    /// <summary>The same batch on an evening that cools over eight hours, its vapour left as it was or wrung out.</summary>
    private static AdviceRequest Cooling(AdviceRequest request, double dryBulbC, double nightK, double humidity, double? readyBy) => request with
    {
        Forecast =
        [.. Enumerable.Range(1, 36).Select(hour =>
        {
            double fallenK = nightK * Math.Min(hour / 8.0, 1);
            return new WeatherReading(
                InventedBatch.LoadedAt.AddHours(hour), DryBulbC: dryBulbC - fallenK, RelativeHumidity: Math.Min(humidity + 0.045 * fallenK, 1));
        })],
        Batch = request.Batch with { ReadyBy = readyBy is { } hours ? InventedBatch.LoadedAt.AddHours(hours) : null },
    };
}

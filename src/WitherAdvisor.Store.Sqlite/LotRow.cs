using WitherAdvisor.Leaf;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of Lot, in the order selected.</summary>
internal sealed record LotRow(
    string BatchId,
    long Place,
    long LoadedAtMs,
    double GreenWeightKg,
    string? Division,
    string? Field,
    string? Cultivar,
    string? BushAge,
    string? Standard,
    long? PluckedFromMs,
    long? PluckedToMs,
    double? MeasuredSurfaceWaterKgPerKg,
    string? SurfaceFeel,
    double? MeasuredMoistureWetBasis,
    long Expected)
{
    public static LotRow Of(string batchId, int place, LeafLot lot) => new(
        batchId, place, lot.LoadedAt.ToUnixTimeMilliseconds(), lot.GreenWeightKg,
        lot.Label?.Division, lot.Label?.Field, lot.Label?.Cultivar, StoredWord.Of(lot.Label?.BushAge), StoredWord.Of(lot.Label?.Standard),
        lot.PluckedFrom?.ToUnixTimeMilliseconds(), lot.PluckedTo?.ToUnixTimeMilliseconds(),
        lot.MeasuredSurfaceWaterKgPerKg, StoredWord.Of(lot.SurfaceFeel), lot.MeasuredMoistureWetBasis, lot.IsExpected ? 1 : 0);

    public LeafLot ToLot() => new(
        DateTimeOffset.FromUnixTimeMilliseconds(LoadedAtMs), GreenWeightKg, Label(), Instant(PluckedFromMs), Instant(PluckedToMs),
        MeasuredSurfaceWaterKgPerKg, StoredWord.Read<SurfaceFeel>(SurfaceFeel), MeasuredMoistureWetBasis, Expected != 0);

    private LeafLabel? Label() => Division is null || Field is null
        ? null
        : new(Division, Field, Cultivar, StoredWord.Read<BushAge>(BushAge), StoredWord.Read<LeafStandard>(Standard));

    private static DateTimeOffset? Instant(long? ms) => ms is { } known ? DateTimeOffset.FromUnixTimeMilliseconds(known) : null;
}

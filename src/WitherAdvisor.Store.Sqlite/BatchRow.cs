using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>A row of Batch, in the order selected.</summary>
internal sealed record BatchRow(
    string Id,
    string SiteId,
    string TroughId,
    string Division,
    string Field,
    string? Cultivar,
    string? BushAge,
    string? Standard,
    long PluckedFromMs,
    long PluckedToMs,
    long LoadedAtMs,
    double GreenWeightKg,
    double? MeasuredSurfaceWaterKgPerKg,
    string? SurfaceFeel,
    double? MeasuredMoistureWetBasis,
    long? ReadyByMs,
    long CreatedAtMs,
    long? UnloadedAtMs,
    string? Ended,
    string? EndReason,
    string? MixedIntoId,
    long PluckingAssumed,
    long LotCount)
{
    public static BatchRow Of(StoredBatch stored)
    {
        var batch = stored.Batch;
        var label = batch.Label;
        return new(
            stored.Id, stored.SiteId, stored.TroughId,
            label.Division, label.Field, label.Cultivar, StoredWord.Of(label.BushAge), StoredWord.Of(label.Standard),
            batch.PluckedFrom.ToUnixTimeMilliseconds(),
            batch.PluckedTo.ToUnixTimeMilliseconds(),
            batch.LoadedAt.ToUnixTimeMilliseconds(),
            batch.GreenWeightKg,
            batch.MeasuredSurfaceWaterKgPerKg, StoredWord.Of(batch.SurfaceFeel), batch.MeasuredMoistureWetBasis,
            batch.ReadyBy?.ToUnixTimeMilliseconds(),
            stored.CreatedAt.ToUnixTimeMilliseconds(),
            stored.UnloadedAt?.ToUnixTimeMilliseconds(),
            StoredWord.Of(stored.Ended), stored.EndReason, stored.MixedIntoId,
            stored.PluckingAssumed ? 1 : 0,
            batch.Lots.Count);
    }

    /// <summary>The batch without its lots.</summary>
    public StoredBatch ToBatch() =>
        new(Id, SiteId, TroughId, ToLeafBatch(), DateTimeOffset.FromUnixTimeMilliseconds(CreatedAtMs), Instant(UnloadedAtMs),
            StoredWord.Read<BatchEnd>(Ended), EndReason, MixedIntoId, PluckingAssumed != 0);

    private Batch ToLeafBatch() => new(
        new LeafLabel(Division, Field, Cultivar, StoredWord.Read<BushAge>(BushAge), StoredWord.Read<LeafStandard>(Standard)),
        DateTimeOffset.FromUnixTimeMilliseconds(PluckedFromMs),
        DateTimeOffset.FromUnixTimeMilliseconds(PluckedToMs),
        DateTimeOffset.FromUnixTimeMilliseconds(LoadedAtMs),
        GreenWeightKg,
        MeasuredSurfaceWaterKgPerKg,
        StoredWord.Read<SurfaceFeel>(SurfaceFeel),
        MeasuredMoistureWetBasis,
        Instant(ReadyByMs));

    private static DateTimeOffset? Instant(long? ms) => ms is { } known ? DateTimeOffset.FromUnixTimeMilliseconds(known) : null;
}

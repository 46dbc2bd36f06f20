using System.Data.Common;
using Dapper;
using Microsoft.Data.Sqlite;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>How rows of Batch and Lot are written and read.</summary>
internal static class BatchSql
{
    public const string Columns = """
        Id, SiteId, TroughId, Division, Field, Cultivar, BushAge, Standard,
        PluckedFromMs, PluckedToMs, LoadedAtMs, GreenWeightKg,
        MeasuredSurfaceWaterKgPerKg, SurfaceFeel, MeasuredMoistureWetBasis, ReadyByMs, CreatedAtMs, UnloadedAtMs,
        Ended, EndReason, MixedIntoId, PluckingAssumed, LotCount
        """;

    public const string ById = $"SELECT {Columns} FROM Batch WHERE Id = @batchId";

    public const string List = $"""
        SELECT {Columns} FROM Batch
        WHERE SiteId = @siteId
        ORDER BY CreatedAtMs DESC, Id DESC
        LIMIT @most
        """;

    public const string OnTrough = $"""
        SELECT {Columns} FROM Batch
        WHERE SiteId = @siteId AND TroughId = @troughId
          AND LoadedAtMs <= @atMs AND (Ended IS NULL OR UnloadedAtMs > @atMs)
        ORDER BY LoadedAtMs DESC, Id DESC
        LIMIT @most
        """;

    public const string End = """
        UPDATE Batch SET Ended = @how, UnloadedAtMs = @atMs, MixedIntoId = @intoBatchId, EndReason = @reason
        WHERE Id = @batchId AND Ended IS NULL
        """;

    private const string AddBatch = $"""
        INSERT INTO Batch ({Columns})
        VALUES (
            @Id, @SiteId, @TroughId, @Division, @Field, @Cultivar, @BushAge, @Standard,
            @PluckedFromMs, @PluckedToMs, @LoadedAtMs, @GreenWeightKg,
            @MeasuredSurfaceWaterKgPerKg, @SurfaceFeel, @MeasuredMoistureWetBasis, @ReadyByMs, @CreatedAtMs, @UnloadedAtMs,
            @Ended, @EndReason, @MixedIntoId, @PluckingAssumed, @LotCount)
        """;

    private const string ChangeLeaf = """
        UPDATE Batch SET
            Division = @Division, Field = @Field, Cultivar = @Cultivar, BushAge = @BushAge, Standard = @Standard,
            PluckedFromMs = @PluckedFromMs, PluckedToMs = @PluckedToMs, LoadedAtMs = @LoadedAtMs, GreenWeightKg = @GreenWeightKg,
            MeasuredSurfaceWaterKgPerKg = @MeasuredSurfaceWaterKgPerKg, SurfaceFeel = @SurfaceFeel,
            MeasuredMoistureWetBasis = @MeasuredMoistureWetBasis, LotCount = @LotCount
        WHERE Id = @Id
        """;

    private const string LotColumns = """
        BatchId, Place, LoadedAtMs, GreenWeightKg, Division, Field, Cultivar, BushAge, Standard,
        PluckedFromMs, PluckedToMs, MeasuredSurfaceWaterKgPerKg, SurfaceFeel, MeasuredMoistureWetBasis, Expected
        """;

    private const string AddLot = $"""
        INSERT INTO Lot ({LotColumns})
        VALUES (
            @BatchId, @Place, @LoadedAtMs, @GreenWeightKg, @Division, @Field, @Cultivar, @BushAge, @Standard,
            @PluckedFromMs, @PluckedToMs, @MeasuredSurfaceWaterKgPerKg, @SurfaceFeel, @MeasuredMoistureWetBasis, @Expected)
        """;

    private const string DropLots = "DELETE FROM Lot WHERE BatchId = @Id";

    private const string Lots = $"SELECT {LotColumns} FROM Lot WHERE BatchId = @Id ORDER BY Place";

    public static void Add(StoredBatch batch, SqliteConnection connection, DbTransaction transaction)
    {
        connection.Execute(AddBatch, BatchRow.Of(batch), transaction);
        AddLots(batch, connection, transaction);
    }

    /// <summary>Puts other leaf in the place of a batch's.</summary>
    public static void Change(StoredBatch batch, SqliteConnection connection, DbTransaction transaction)
    {
        connection.Execute(ChangeLeaf, BatchRow.Of(batch), transaction);
        connection.Execute(DropLots, new { batch.Id }, transaction);
        AddLots(batch, connection, transaction);
    }

    /// <summary>The batch of a row, with its lots.</summary>
    public static StoredBatch Whole(BatchRow row, SqliteConnection connection, DbTransaction? transaction = null)
    {
        StoredBatch batch = row.ToBatch();
        return row.LotCount == 0
            ? batch
            : batch with
            {
                Batch = batch.Batch with
                {
                    Lots = [.. connection.Query<LotRow>(Lots, new { row.Id }, transaction).Select(lot => lot.ToLot())],
                },
            };
    }

    private static void AddLots(StoredBatch batch, SqliteConnection connection, DbTransaction transaction) =>
        connection.Execute(AddLot, batch.Batch.Lots.Select((lot, place) => LotRow.Of(batch.Id, place, lot)), transaction);
}

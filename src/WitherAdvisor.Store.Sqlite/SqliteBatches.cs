using System.Data.Common;
using Dapper;
using Microsoft.Data.Sqlite;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>Batches and the advice given for them, in SQLite.</summary>
internal sealed class SqliteBatches(SqliteDatabase database) : IBatchStore
{
    public const string BatchColumns = """
        Id, SiteId, TroughId, Division, Field, Cultivar, BushAge, Standard,
        PluckedFromMs, PluckedToMs, LoadedAtMs, GreenWeightKg,
        MeasuredSurfaceWaterKgPerKg, SurfaceFeel, MeasuredMoistureWetBasis, ReadyByMs, CreatedAtMs, UnloadedAtMs,
        Ended, EndReason, MixedIntoId, PluckingAssumed
        """;

    private const string AdviceColumns = "Id, BatchId, MadeAtMs, Format, ModelVersion, CoefficientSet, RequestJson, OutcomeJson, AnswerJson";

    public const string AddBatchSql = $"""
        INSERT INTO Batch ({BatchColumns})
        VALUES (
            @Id, @SiteId, @TroughId, @Division, @Field, @Cultivar, @BushAge, @Standard,
            @PluckedFromMs, @PluckedToMs, @LoadedAtMs, @GreenWeightKg,
            @MeasuredSurfaceWaterKgPerKg, @SurfaceFeel, @MeasuredMoistureWetBasis, @ReadyByMs, @CreatedAtMs, @UnloadedAtMs,
            @Ended, @EndReason, @MixedIntoId, @PluckingAssumed)
        """;

    private const string AddAdviceSql = $"""
        INSERT INTO Advice ({AdviceColumns})
        VALUES (@Id, @BatchId, @MadeAtMs, @Format, @ModelVersion, @CoefficientSet, @RequestJson, @OutcomeJson, @AnswerJson)
        """;

    private const string ListSql = $"""
        SELECT {BatchColumns} FROM Batch
        WHERE SiteId = @siteId
        ORDER BY CreatedAtMs DESC, Id DESC
        LIMIT @most
        """;

    private const string OnTroughSql = $"""
        SELECT {BatchColumns} FROM Batch
        WHERE SiteId = @siteId AND TroughId = @troughId
          AND LoadedAtMs <= @atMs AND (Ended IS NULL OR UnloadedAtMs > @atMs)
        ORDER BY LoadedAtMs DESC, Id DESC
        LIMIT @most
        """;

    public const string EndSql = """
        UPDATE Batch SET Ended = @how, UnloadedAtMs = @atMs, MixedIntoId = @intoBatchId, EndReason = @reason
        WHERE Id = @batchId AND Ended IS NULL
        """;

    private const string ListAdviceSql = $"""
        SELECT {AdviceColumns} FROM Advice
        WHERE BatchId = @batchId
        ORDER BY MadeAtMs DESC, Id DESC
        LIMIT @most
        """;

    public Task<AddedBatch> Add(StoredBatch batch, MadeAdvice advice, bool onceOnly, CancellationToken cancel = default)
    {
        if (advice.Kept.BatchId != batch.Id)
        {
            throw new ArgumentException($"The advice is for batch '{advice.Kept.BatchId}', not for '{batch.Id}'.", nameof(advice));
        }

        return database.Write(
            owner: $"trough '{batch.TroughId}' of site '{batch.SiteId}'",
            (connection, transaction) => Add(batch, advice, onceOnly, connection, transaction),
            cancel);
    }

    private static AddedBatch Add(
        StoredBatch batch, MadeAdvice advice, bool onceOnly, SqliteConnection connection, DbTransaction transaction)
    {
        object place = OnTroughAt(batch.SiteId, batch.TroughId, batch.Batch.LoadedAt);
        List<StoredBatch> lying = [.. connection.Query<BatchRow>(OnTroughSql, place, transaction).Select(row => row.ToBatch())];
        if (onceOnly && lying.Find(other => other.Batch == batch.Batch) is { } same)
        {
            return new(lying, same);
        }

        connection.Execute(AddBatchSql, BatchRow.Of(batch), transaction);
        Add(advice, connection, transaction);
        return new(lying, null);
    }

    private static int Add(MadeAdvice advice, SqliteConnection connection, DbTransaction transaction) =>
        connection.Execute(AddAdviceSql, AdviceRow.Of(advice.Kept), transaction)
        + connection.Execute(OutcomeSql.AddFigures, FiguresRow.Of(advice.Figures), transaction);

    public Task<StoredBatch?> Find(string batchId, CancellationToken cancel = default) => database.Read(
        connection => connection.QuerySingleOrDefault<BatchRow>(
            $"SELECT {BatchColumns} FROM Batch WHERE Id = @batchId", new { batchId })?.ToBatch(),
        cancel);

    public Task<IReadOnlyList<StoredBatch>> List(string siteId, int most, CancellationToken cancel = default)
    {
        // SQLite takes a negative limit for none at all.
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(most);
        return Batches(ListSql, new { siteId, most }, cancel);
    }

    public Task<IReadOnlyList<StoredBatch>> OnTrough(
        string siteId, string troughId, DateTimeOffset at, CancellationToken cancel = default) =>
        Batches(OnTroughSql, OnTroughAt(siteId, troughId, at), cancel);

    public Task<bool> MarkUnloaded(string batchId, DateTimeOffset at, CancellationToken cancel = default) =>
        End(batchId, BatchEnd.Unloaded, at, null, null, cancel);

    public Task<bool> MarkCancelled(string batchId, DateTimeOffset at, string reason, CancellationToken cancel = default) =>
        End(batchId, BatchEnd.Cancelled, at, null, reason, cancel);

    public Task<bool> MarkMixed(
        string batchId, DateTimeOffset at, string intoBatchId, string reason, CancellationToken cancel = default) =>
        End(batchId, BatchEnd.Mixed, at, intoBatchId, reason, cancel);

    public Task AddAdvice(MadeAdvice advice, CancellationToken cancel = default) => database.Write(
        owner: $"batch '{advice.Kept.BatchId}'", (connection, transaction) => Add(advice, connection, transaction), cancel);

    public Task<KeptAdvice?> FindAdvice(string adviceId, CancellationToken cancel = default) => database.Read(
        connection => connection.QuerySingleOrDefault<AdviceRow>(
            $"SELECT {AdviceColumns} FROM Advice WHERE Id = @adviceId", new { adviceId })?.ToAdvice(),
        cancel);

    public Task<IReadOnlyList<KeptAdvice>> ListAdvice(string batchId, CancellationToken cancel = default) =>
        database.Read<IReadOnlyList<KeptAdvice>>(
            connection => [.. connection.Query<AdviceRow>(
                ListAdviceSql, new { batchId, most = IBatchStore.MostListed }).Select(row => row.ToAdvice())],
            cancel);

    private static object OnTroughAt(string siteId, string troughId, DateTimeOffset at) =>
        new { siteId, troughId, atMs = at.ToUnixTimeMilliseconds(), most = IBatchStore.MostListed };

    private Task<bool> End(
        string batchId, BatchEnd how, DateTimeOffset at, string? intoBatchId, string? reason, CancellationToken cancel) =>
        database.Write(
            owner: $"batch '{intoBatchId}'",
            (connection, transaction) => connection.Execute(
                EndSql,
                new { batchId, how = StoredWord.Of(how), atMs = at.ToUnixTimeMilliseconds(), intoBatchId, reason },
                transaction) == 1,
            cancel);

    private Task<IReadOnlyList<StoredBatch>> Batches(string sql, object parameters, CancellationToken cancel) =>
        database.Read<IReadOnlyList<StoredBatch>>(
            connection => [.. connection.Query<BatchRow>(sql, parameters).Select(row => row.ToBatch())],
            cancel);
}

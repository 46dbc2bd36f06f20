using System.Data.Common;
using Dapper;
using Microsoft.Data.Sqlite;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>Batches and the advice given for them, in SQLite.</summary>
internal sealed class SqliteBatches(SqliteDatabase database) : IBatchStore
{
    private const string AdviceColumns = "Id, BatchId, MadeAtMs, Format, ModelVersion, CoefficientSet, RequestJson, OutcomeJson, AnswerJson";

    private const string AddAdviceSql = $"""
        INSERT INTO Advice ({AdviceColumns})
        VALUES (@Id, @BatchId, @MadeAtMs, @Format, @ModelVersion, @CoefficientSet, @RequestJson, @OutcomeJson, @AnswerJson)
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
        IEnumerable<BatchRow> rows = connection.Query<BatchRow>(BatchSql.OnTrough, place, transaction);
        List<StoredBatch> lying = [.. rows.Select(row => BatchSql.Whole(row, connection, transaction))];
        if (onceOnly && lying.Find(other => other.Batch == batch.Batch) is { } same)
        {
            return new(lying, same);
        }

        BatchSql.Add(batch, connection, transaction);
        Add(advice, connection, transaction);
        return new(lying, null);
    }

    private static int Add(MadeAdvice advice, SqliteConnection connection, DbTransaction transaction) =>
        connection.Execute(AddAdviceSql, AdviceRow.Of(advice.Kept), transaction)
        + connection.Execute(OutcomeSql.AddFigures, FiguresRow.Of(advice.Figures), transaction);

    public Task<StoredBatch?> Find(string batchId, CancellationToken cancel = default) => database.Read(
        connection => Find(batchId, connection, null), cancel);

    public Task<IReadOnlyList<StoredBatch>> List(string siteId, int most, CancellationToken cancel = default)
    {
        // SQLite takes a negative limit for none at all.
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(most);
        return Batches(BatchSql.List, new { siteId, most }, cancel);
    }

    public Task<IReadOnlyList<StoredBatch>> OnTrough(
        string siteId, string troughId, DateTimeOffset at, CancellationToken cancel = default) =>
        Batches(BatchSql.OnTrough, OnTroughAt(siteId, troughId, at), cancel);

    public Task<bool> MarkUnloaded(string batchId, DateTimeOffset at, CancellationToken cancel = default) =>
        End(batchId, BatchEnd.Unloaded, at, null, null, null, cancel);

    public Task<bool> MarkCancelled(string batchId, DateTimeOffset at, string reason, CancellationToken cancel = default) =>
        End(batchId, BatchEnd.Cancelled, at, null, reason, null, cancel);

    public Task<bool> MarkMixed(
        string batchId, DateTimeOffset at, string intoBatchId, string reason, LeafChange? grown, CancellationToken cancel = default) =>
        End(batchId, BatchEnd.Mixed, at, intoBatchId, reason, grown, cancel);

    public Task<bool> ChangeLeaf(LeafChange change, CancellationToken cancel = default) => database.WriteOrTakeBack(
        owner: $"batch '{change.Seen.Id}'", (connection, transaction) => Change(change, connection, transaction), cancel);

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
        string batchId, BatchEnd how, DateTimeOffset at, string? intoBatchId, string? reason, LeafChange? grown, CancellationToken cancel) =>
        database.WriteOrTakeBack(
            owner: $"batch '{intoBatchId}'",
            (connection, transaction) => connection.Execute(
                BatchSql.End,
                new { batchId, how = StoredWord.Of(how), atMs = at.ToUnixTimeMilliseconds(), intoBatchId, reason },
                transaction) == 1
                && (grown is null || Change(grown, connection, transaction)),
            cancel);

    private static bool Change(LeafChange change, SqliteConnection connection, DbTransaction transaction)
    {
        if (Find(change.Seen.Id, connection, transaction) is not { IsRunning: true } now || now != change.Seen)
        {
            return false;
        }

        BatchSql.Change(now with { Batch = change.Leaf }, connection, transaction);
        Add(change.Advice, connection, transaction);
        return true;
    }

    private static StoredBatch? Find(string batchId, SqliteConnection connection, DbTransaction? transaction) =>
        connection.QuerySingleOrDefault<BatchRow>(BatchSql.ById, new { batchId }, transaction) is { } row
            ? BatchSql.Whole(row, connection, transaction)
            : null;

    private Task<IReadOnlyList<StoredBatch>> Batches(string sql, object parameters, CancellationToken cancel) =>
        database.Read<IReadOnlyList<StoredBatch>>(
            connection => [.. connection.Query<BatchRow>(sql, parameters).Select(row => BatchSql.Whole(row, connection))],
            cancel);
}

using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>What came of batches, in SQLite.</summary>
internal sealed class SqliteOutcomes(SqliteDatabase database) : IOutcomeStore
{
    private const string AddScaleSql = """
        INSERT INTO TasterScale (SiteId, Name, Place, LeastMark, MostMark) VALUES (@siteId, @Name, @Place, @LeastMark, @MostMark)
        """;

    public Task Put(StoredOutcome outcome, CancellationToken cancel = default) => database.Write(
        owner: $"batch '{outcome.BatchId}'",
        (connection, transaction) => connection.Execute(OutcomeSql.AddOutcome, OutcomeRow.Of(outcome), transaction),
        cancel);

    public Task<StoredOutcome?> Find(string batchId, CancellationToken cancel = default) => database.Read(
        connection => connection.QueryFirstOrDefault<OutcomeRow>(OutcomeSql.Versions, new { batchId })?.ToOutcome(),
        cancel);

    public Task<IReadOnlyList<StoredOutcome>> History(string batchId, CancellationToken cancel = default) =>
        database.Read<IReadOnlyList<StoredOutcome>>(
            connection => [.. connection.Query<OutcomeRow>(OutcomeSql.Versions, new { batchId }).Select(row => row.ToOutcome())],
            cancel);

    public Task<AdviceFigures?> LastAdvice(string batchId, CancellationToken cancel = default) => database.Read(
        connection => connection.QuerySingleOrDefault<FiguresRow>(OutcomeSql.LastAdvice, new { batchId })?.ToFigures(),
        cancel);

    public IAsyncEnumerable<LoggedOutcome> Log(string siteId, OutcomeFilter filter, CancellationToken cancel = default) =>
        database.Stream(connection => Lines(connection, siteId, filter), cancel);

    public IAsyncEnumerable<LoadedBatch> Loaded(string siteId, DateTimeOffset from, CancellationToken cancel = default) =>
        database.Stream(
            connection => connection.Query<(long LoadedAtMs, string? Spell)>(
                    OutcomeSql.Loaded, new { siteId, fromMs = from.ToUnixTimeMilliseconds() }, buffered: false)
                .Select(row => new LoadedBatch(DateTimeOffset.FromUnixTimeMilliseconds(row.LoadedAtMs), row.Spell)),
            cancel);

    public Task<bool> Import(string siteId, Func<IOutcomeImport, bool> import, CancellationToken cancel = default) =>
        database.WriteOrTakeBack(
            owner: $"trough of site '{siteId}'",
            (connection, transaction) => import(new SqliteOutcomeImport(siteId, connection, transaction)),
            cancel);

    public Task Preview(string siteId, Action<IOutcomeImport> import, CancellationToken cancel = default) => database.Read(
        connection =>
        {
            // One transaction, so that all rows are held against the same state; it writes nothing.
            using SqliteTransaction transaction = connection.BeginTransaction(deferred: true);
            import(new SqliteOutcomeImport(siteId, connection, transaction));
            return true;
        },
        cancel);

    public Task<IReadOnlyList<TasterScale>> ListScales(string siteId, CancellationToken cancel = default) =>
        database.Read<IReadOnlyList<TasterScale>>(
            connection => [.. connection.Query<TasterScale>(OutcomeSql.ListScales, new { siteId })],
            cancel);

    public Task PutScales(string siteId, IReadOnlyList<TasterScale> scales, CancellationToken cancel = default) => database.Write(
        owner: $"site '{siteId}'",
        (connection, transaction) => connection.Execute("DELETE FROM TasterScale WHERE SiteId = @siteId", new { siteId }, transaction)
            + connection.Execute(
                AddScaleSql,
                scales.Select((scale, place) => new { siteId, scale.Name, Place = place, scale.LeastMark, scale.MostMark }),
                transaction),
        cancel);

    private static IEnumerable<LoggedOutcome> Lines(SqliteConnection connection, string siteId, OutcomeFilter filter) =>
        connection.Query<BatchRow, OutcomeRow, FiguresRow?, LoggedOutcome>(
            OutcomeSql.Log(filter),
            (batch, outcome, figures) => new(BatchSql.Whole(batch, connection), outcome.ToOutcome(), figures?.ToFigures()),
            new
            {
                siteId,
                fromMs = filter.From?.ToUnixTimeMilliseconds() ?? long.MinValue,
                toMs = filter.To?.ToUnixTimeMilliseconds() ?? long.MaxValue,
                cultivar = filter.Cultivar,
                spell = filter.Spell is { } spell ? JsonNamingPolicy.SnakeCaseLower.ConvertName(spell.ToString()) : null,
            },
            buffered: false,
            splitOn: OutcomeSql.SplitOn);
}

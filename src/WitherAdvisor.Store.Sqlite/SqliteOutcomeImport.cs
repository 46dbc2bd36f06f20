using System.Data.Common;
using Dapper;
using Microsoft.Data.Sqlite;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>An import within its transaction.</summary>
internal sealed class SqliteOutcomeImport(string siteId, SqliteConnection connection, DbTransaction transaction) : IOutcomeImport
{
    public KeptBatch? Find(string batchId) => Find(OutcomeSql.BatchById, new { batchId });

    public KeptBatch? Find(string troughId, DateTimeOffset loadedAt, string division, string field) => Find(
        OutcomeSql.BatchByLabel, new { siteId, troughId, loadedAtMs = loadedAt.ToUnixTimeMilliseconds(), division, field });

    public void Add(StoredBatch batch) => BatchSql.Add(batch, connection, transaction);

    public void Unload(string batchId, DateTimeOffset? at) => connection.Execute(
        BatchSql.End,
        new
        {
            batchId,
            how = StoredWord.Of(BatchEnd.Unloaded),
            atMs = at?.ToUnixTimeMilliseconds(),
            intoBatchId = (string?)null,
            reason = (string?)null,
        },
        transaction);

    public void Add(StoredOutcome outcome) => connection.Execute(OutcomeSql.AddOutcome, OutcomeRow.Of(outcome), transaction);

    public void Add(AdviceFigures figures) => connection.Execute(OutcomeSql.AddFigures, FiguresRow.Of(figures), transaction);

    private KeptBatch? Find(string sql, object parameters) => connection
        .Query<BatchRow, OutcomeRow?, FiguresRow?, KeptBatch>(
            sql,
            (batch, outcome, figures) => new(BatchSql.Whole(batch, connection, transaction), outcome?.ToOutcome(), figures?.ToFigures()),
            parameters, transaction, splitOn: OutcomeSql.SplitOn)
        .FirstOrDefault();
}

using Dapper;
using WitherAdvisor.Loft.Kept.Coefficients;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>Recalibrations, in SQLite.</summary>
internal sealed class SqliteRecalibrations(SqliteDatabase database) : IRecalibrationStore
{
    private const string Columns = """
        Id, SiteId, ProposalName, ComparedWith, Status, Share, Step, Failure, QueuedAtMs, StartedAtMs, EndedAtMs
        """;

    private const string FindSql = $"SELECT {Columns} FROM Recalibration WHERE Id = @id";

    private const string ListSql = $"SELECT {Columns} FROM Recalibration WHERE SiteId = @siteId ORDER BY QueuedAtMs DESC, rowid DESC";

    private const string QueueSql = """
        INSERT INTO Recalibration (Id, SiteId, ProposalName, Status, Share, QueuedAtMs)
        SELECT @id, @siteId, 'learned-' || (1 + (SELECT COUNT(*) FROM Recalibration WHERE SiteId = @siteId)), 'queued', 0, @atMs
        WHERE NOT EXISTS (SELECT 1 FROM Recalibration WHERE SiteId = @siteId AND Status IN ('queued', 'running'))
        """;

    private const string NextSql = "SELECT Id, SiteId FROM Recalibration WHERE Status = 'queued' ORDER BY QueuedAtMs, rowid LIMIT 1";

    private const string BeginSql = $"""
        UPDATE Recalibration SET Status = 'running', StartedAtMs = @atMs, ComparedWith = ({SqliteCoefficients.NewestAdoption})
        WHERE Id = @id
        """;

    private const string TellSql = "UPDATE Recalibration SET Share = @share, Step = @step WHERE Id = @id AND Status = 'running'";

    private const string DoneSql = """
        UPDATE Recalibration SET Status = 'done', Share = 1, EndedAtMs = @atMs WHERE Id = @id AND Status = 'running'
        """;

    private const string EndSql = """
        UPDATE Recalibration SET Status = @how, Failure = @failure, EndedAtMs = @atMs
        WHERE Id = @id AND Status IN ('queued', 'running')
        """;

    private const string InterruptSql = "UPDATE Recalibration SET Status = 'interrupted', EndedAtMs = @atMs WHERE Status = 'running'";

    public Task<StoredRecalibration?> Queue(string id, string siteId, DateTimeOffset at, CancellationToken cancel = default) => database.Write(
        owner: $"site '{siteId}'",
        (connection, transaction) => connection.Execute(QueueSql, new { id, siteId, atMs = at.ToUnixTimeMilliseconds() }, transaction) == 1
            ? connection.QuerySingle<RecalibrationRow>(FindSql, new { id }, transaction).ToRecalibration()
            : null,
        cancel);

    public Task<StoredRecalibration?> Find(string id, CancellationToken cancel = default) => database.Read(
        connection => connection.QuerySingleOrDefault<RecalibrationRow>(FindSql, new { id })?.ToRecalibration(), cancel);

    public Task<IReadOnlyList<StoredRecalibration>> List(string siteId, CancellationToken cancel = default) =>
        database.Read<IReadOnlyList<StoredRecalibration>>(
            connection => [.. connection.Query<RecalibrationRow>(ListSql, new { siteId }).Select(row => row.ToRecalibration())], cancel);

    public Task<StoredRecalibration?> BeginNext(DateTimeOffset at, CancellationToken cancel = default) => database.Write(
        owner: "site of a recalibration",
        (connection, transaction) =>
        {
            if (connection.QuerySingleOrDefault<(string Id, string SiteId)?>(NextSql, transaction: transaction) is not { } next)
            {
                return null;
            }

            connection.Execute(BeginSql, new { id = next.Id, siteId = next.SiteId, atMs = at.ToUnixTimeMilliseconds() }, transaction);
            return connection.QuerySingle<RecalibrationRow>(FindSql, new { id = next.Id }, transaction).ToRecalibration();
        },
        cancel);

    public Task<bool> Tell(string id, double share, string step, CancellationToken cancel = default) =>
        Change(TellSql, new { id, share, step }, cancel);

    public Task<bool> Finish(string id, DateTimeOffset at, StoredCoefficientSet proposal, CancellationToken cancel = default) =>
        database.WriteOrTakeBack(
            owner: $"site '{proposal.SiteId}'",
            (connection, transaction) =>
            {
                if (connection.Execute(DoneSql, new { id, atMs = at.ToUnixTimeMilliseconds() }, transaction) == 0)
                {
                    return false;
                }

                SqliteCoefficients.Add(proposal, connection, transaction);
                return true;
            },
            cancel);

    public Task<bool> End(
        string id, DateTimeOffset at, RecalibrationStatus how, RecalibrationFailure? failure = null, CancellationToken cancel = default) =>
        Change(
            EndSql,
            new
            {
                id,
                how = StoredWord.Of(how),
                failure = failure is null ? null : RecalibrationFailureJson.Write(failure),
                atMs = at.ToUnixTimeMilliseconds(),
            },
            cancel);

    public Task<int> InterruptRunning(DateTimeOffset at, CancellationToken cancel = default) => database.Write(
        owner: "site of a recalibration",
        (connection, transaction) => connection.Execute(InterruptSql, new { atMs = at.ToUnixTimeMilliseconds() }, transaction),
        cancel);

    private Task<bool> Change(string sql, object parameters, CancellationToken cancel) => database.Write(
        owner: "site of a recalibration",
        (connection, transaction) => connection.Execute(sql, parameters, transaction) == 1,
        cancel);
}

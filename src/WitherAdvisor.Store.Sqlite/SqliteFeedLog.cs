using Dapper;
using WitherAdvisor.Loft.Kept.Weather;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>What came of asking feeds, in SQLite.</summary>
internal sealed class SqliteFeedLog(SqliteDatabase database) : IFeedLog
{
    private const string Columns = """
        SiteId, Feed, FetchedAtMs, Refusal, HoursGot, NewestAnalysedMs,
        CellLatitudeDeg, CellLongitudeDeg, CellElevationM, Notes
        """;

    // Nothing points to a fetch, so it may be replaced by deleting it first.
    private const string AddSql = $"""
        INSERT OR REPLACE INTO FeedFetch ({Columns})
        VALUES (
            @SiteId, @Feed, @FetchedAtMs, @Refusal, @HoursGot, @NewestAnalysedMs,
            @CellLatitudeDeg, @CellLongitudeDeg, @CellElevationM, @Notes)
        """;

    // The last good one says from where on the past has to be asked for, however long ago that was.
    private const string ForgetSql = """
        DELETE FROM FeedFetch AS old
        WHERE SiteId = @SiteId AND FetchedAtMs < @oldestMs
            AND (Refusal IS NOT NULL OR EXISTS (
                SELECT 1 FROM FeedFetch AS newer
                WHERE newer.SiteId = old.SiteId AND newer.Feed = old.Feed
                    AND newer.FetchedAtMs > old.FetchedAtMs AND newer.Refusal IS NULL))
        """;

    private const string LastSql = $"""
        SELECT {Columns} FROM FeedFetch
        WHERE SiteId = @siteId AND Feed = @feed AND (Refusal IS NULL OR @goodOnly = 0)
        ORDER BY FetchedAtMs DESC LIMIT 1
        """;

    public Task Add(FeedFetch fetch, CancellationToken cancel = default) => database.Write(
        owner: $"site '{fetch.SiteId}'",
        (connection, transaction) =>
        {
            int added = connection.Execute(AddSql, FeedFetchRow.Of(fetch), transaction);
            long oldestMs = fetch.FetchedAt.AddDays(-IFeedLog.DaysKept).ToUnixTimeMilliseconds();
            connection.Execute(ForgetSql, new { fetch.SiteId, oldestMs }, transaction);
            return added;
        },
        cancel);

    public Task<FeedFetch?> Last(string siteId, string feed, CancellationToken cancel = default) =>
        Newest(siteId, feed, goodOnly: 0, cancel);

    public Task<FeedFetch?> LastGood(string siteId, string feed, CancellationToken cancel = default) =>
        Newest(siteId, feed, goodOnly: 1, cancel);

    private Task<FeedFetch?> Newest(string siteId, string feed, int goodOnly, CancellationToken cancel) => database.Read(
        connection => connection.QuerySingleOrDefault<FeedFetchRow>(LastSql, new { siteId, feed, goodOnly })?.ToFetch(),
        cancel);
}

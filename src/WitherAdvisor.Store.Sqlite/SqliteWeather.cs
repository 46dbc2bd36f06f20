using Dapper;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>Weather readings and rain totals, in SQLite.</summary>
internal sealed class SqliteWeather(SqliteDatabase database) : IWeatherStore
{
    private const string PutRainTotalSql = """
        INSERT INTO RainTotal (SiteId, FromMs, ToMs, RainMm, SavedAtMs)
        VALUES (@siteId, @fromMs, @toMs, @rainMm, @savedAtMs)
        ON CONFLICT (SiteId, FromMs, ToMs) DO UPDATE SET
            RainMm = excluded.RainMm,
            SavedAtMs = excluded.SavedAtMs
        """;

    private const string ForgetFeedsSql = """
        DELETE FROM WeatherReading WHERE SiteId = @siteId AND Feed <> '';
        DELETE FROM FeedFetch WHERE SiteId = @siteId;
        """;

    // A total excludes its start and includes its end; the stretch asked for includes both.
    private const string ReadRainTotalsSql = """
        SELECT FromMs, ToMs, RainMm FROM RainTotal
        WHERE SiteId = @siteId AND FromMs < @toMs AND ToMs >= @fromMs
        ORDER BY FromMs, ToMs
        """;

    public Task<int> SaveReadings(
        string siteId, WeatherSource source, IReadOnlyList<WeatherReading> readings, DateTimeOffset savedAt,
        CancellationToken cancel = default)
    {
        if (source is not (WeatherSource.Observed or WeatherSource.CallerForecast))
        {
            throw new ArgumentOutOfRangeException(nameof(source), source, "must not be a feed's");
        }

        var rows = readings.Select(reading => ReadingSql.Row(siteId, source, feed: "", reading, savedAt)).ToList();
        return database.Write(
            owner: $"site '{siteId}'",
            (connection, transaction) =>
            {
                var added = connection.Execute(ReadingSql.AddNew, rows, transaction);
                connection.Execute(ReadingSql.Merge, rows, transaction);
                return added;
            },
            cancel);
    }

    public Task SaveFromFeed(
        string siteId, string feed, IReadOnlyList<WeatherReading> analysed, IReadOnlyList<WeatherReading> forecast,
        DateTimeOffset fetchedAt, CancellationToken cancel = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(feed);
        IEnumerable<object> Rows(WeatherSource source, IReadOnlyList<WeatherReading> readings) =>
            readings.Where(reading => reading.TellsAnything).Select(reading => ReadingSql.Row(siteId, source, feed, reading, fetchedAt));
        var rows = Rows(WeatherSource.FeedAnalysis, analysed).Concat(Rows(WeatherSource.FeedForecast, forecast)).ToList();
        return database.Write(
            owner: $"site '{siteId}'",
            (connection, transaction) => connection.Execute(ReadingSql.PutWhole, rows, transaction),
            cancel);
    }

    public Task ForgetFeeds(string siteId, CancellationToken cancel = default) => database.Write(
        owner: $"site '{siteId}'",
        (connection, transaction) => connection.Execute(ForgetFeedsSql, new { siteId }, transaction),
        cancel);

    public Task<IReadOnlyList<SourcedReading>> ReadSourced(
        string siteId, DateTimeOffset from, DateTimeOffset to, CancellationToken cancel = default)
    {
        var stretch = new { siteId, fromMs = from.ToUnixTimeMilliseconds(), toMs = to.ToUnixTimeMilliseconds() };
        return database.Read<IReadOnlyList<SourcedReading>>(
            connection =>
            [
                .. connection.Query<ReadingRow>(ReadingSql.Read, stretch).Select(row => row.ToSourced())
                    .OrderBy(row => row.Reading.Time).ThenBy(row => row.Source),
            ],
            cancel);
    }

    public Task SaveRainTotals(
        string siteId, IReadOnlyList<RainTotal> totals, DateTimeOffset savedAt, CancellationToken cancel = default)
    {
        var rows = totals.Select(total => new
        {
            siteId,
            fromMs = total.From.ToUnixTimeMilliseconds(),
            toMs = total.To.ToUnixTimeMilliseconds(),
            rainMm = total.RainMm,
            savedAtMs = savedAt.ToUnixTimeMilliseconds(),
        });
        return database.Write(
            owner: $"site '{siteId}'",
            (connection, transaction) => connection.Execute(PutRainTotalSql, rows, transaction),
            cancel);
    }

    public Task<IReadOnlyList<RainTotal>> ReadRainTotals(
        string siteId, DateTimeOffset from, DateTimeOffset to, CancellationToken cancel = default)
    {
        var stretch = new { siteId, fromMs = from.ToUnixTimeMilliseconds(), toMs = to.ToUnixTimeMilliseconds() };
        return database.Read<IReadOnlyList<RainTotal>>(
            connection => [.. connection.Query<RainTotalRow>(ReadRainTotalsSql, stretch).Select(row => row.ToTotal())],
            cancel);
    }

    private sealed record RainTotalRow(long FromMs, long ToMs, double RainMm)
    {
        public RainTotal ToTotal() => new(
            DateTimeOffset.FromUnixTimeMilliseconds(FromMs), DateTimeOffset.FromUnixTimeMilliseconds(ToMs), RainMm);
    }
}

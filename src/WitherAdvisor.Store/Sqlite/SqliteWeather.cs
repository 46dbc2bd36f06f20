using Dapper;
using WitherAdvisor.Weather;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>Weather readings and rain totals, in SQLite.</summary>
internal sealed class SqliteWeather(SqliteDatabase database) : IWeatherStore
{
    private const string ValueColumns =
        "TimeMs, DryBulbC, DewPointC, WetBulbC, RelativeHumidity, RainMm, WindMPerS, StationPressurePa, ShortwaveWPerM2";

    private const string AddNewSql = $"""
        INSERT INTO WeatherReading (SiteId, Kind, SavedAtMs, {ValueColumns})
        VALUES (
            @SiteId, @Kind, @SavedAtMs, @TimeMs,
            @DryBulbC, @DewPointC, @WetBulbC, @RelativeHumidity, @RainMm, @WindMPerS, @StationPressurePa, @ShortwaveWPerM2)
        ON CONFLICT (SiteId, Kind, TimeMs) DO NOTHING
        """;

    // Run over the new rows too: merging a reading with itself changes nothing, and the list may tell one hour twice.
    // The three humidities are one value told in three ways, so they are replaced together:
    // a kept dew point would otherwise overrule a later wet bulb for ever, unseen.
    private const string MergeSql = """
        UPDATE WeatherReading SET
            DryBulbC = COALESCE(@DryBulbC, DryBulbC),
            DewPointC = CASE WHEN @HasHumidity = 1 THEN @DewPointC ELSE DewPointC END,
            WetBulbC = CASE WHEN @HasHumidity = 1 THEN @WetBulbC ELSE WetBulbC END,
            RelativeHumidity = CASE WHEN @HasHumidity = 1 THEN @RelativeHumidity ELSE RelativeHumidity END,
            RainMm = COALESCE(@RainMm, RainMm),
            WindMPerS = COALESCE(@WindMPerS, WindMPerS),
            StationPressurePa = COALESCE(@StationPressurePa, StationPressurePa),
            ShortwaveWPerM2 = COALESCE(@ShortwaveWPerM2, ShortwaveWPerM2),
            SavedAtMs = @SavedAtMs
        WHERE SiteId = @SiteId AND Kind = @Kind AND TimeMs = @TimeMs
        """;

    private const string ReadSql = $"""
        SELECT {ValueColumns} FROM WeatherReading
        WHERE SiteId = @siteId AND Kind = @kind AND TimeMs BETWEEN @fromMs AND @toMs
        ORDER BY TimeMs
        """;

    private const string PutRainTotalSql = """
        INSERT INTO RainTotal (SiteId, FromMs, ToMs, RainMm, SavedAtMs)
        VALUES (@siteId, @fromMs, @toMs, @rainMm, @savedAtMs)
        ON CONFLICT (SiteId, FromMs, ToMs) DO UPDATE SET
            RainMm = excluded.RainMm,
            SavedAtMs = excluded.SavedAtMs
        """;

    // A total excludes its start and includes its end; the stretch asked for includes both.
    private const string ReadRainTotalsSql = """
        SELECT FromMs, ToMs, RainMm FROM RainTotal
        WHERE SiteId = @siteId AND FromMs < @toMs AND ToMs >= @fromMs
        ORDER BY FromMs, ToMs
        """;

    public Task<int> SaveReadings(
        string siteId, WeatherKind kind, IReadOnlyList<WeatherReading> readings, DateTimeOffset savedAt,
        CancellationToken cancel = default)
    {
        var rows = readings.Select(reading => Parameters(siteId, kind, reading, savedAt)).ToList();
        return database.Write(
            owner: $"site '{siteId}'",
            (connection, transaction) =>
            {
                var added = connection.Execute(AddNewSql, rows, transaction);
                connection.Execute(MergeSql, rows, transaction);
                return added;
            },
            cancel);
    }

    public Task<IReadOnlyList<WeatherReading>> ReadReadings(
        string siteId, WeatherKind kind, DateTimeOffset from, DateTimeOffset to, CancellationToken cancel = default)
    {
        var stretch = new { siteId, kind = StoredWord.Of(kind), fromMs = from.ToUnixTimeMilliseconds(), toMs = to.ToUnixTimeMilliseconds() };
        return database.Read<IReadOnlyList<WeatherReading>>(
            connection => [.. connection.Query<ReadingRow>(ReadSql, stretch).Select(row => row.ToReading())],
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

    private static object Parameters(string siteId, WeatherKind kind, WeatherReading reading, DateTimeOffset savedAt) => new
    {
        SiteId = siteId,
        Kind = StoredWord.Of(kind),
        TimeMs = reading.Time.ToUnixTimeMilliseconds(),
        reading.DryBulbC,
        reading.DewPointC,
        reading.WetBulbC,
        reading.RelativeHumidity,
        reading.RainMm,
        reading.WindMPerS,
        reading.StationPressurePa,
        reading.ShortwaveWPerM2,
        HasHumidity = (reading.DewPointC ?? reading.WetBulbC ?? reading.RelativeHumidity) is null ? 0 : 1,
        SavedAtMs = savedAt.ToUnixTimeMilliseconds(),
    };

    private sealed record RainTotalRow(long FromMs, long ToMs, double RainMm)
    {
        public RainTotal ToTotal() => new(
            DateTimeOffset.FromUnixTimeMilliseconds(FromMs), DateTimeOffset.FromUnixTimeMilliseconds(ToMs), RainMm);
    }
}

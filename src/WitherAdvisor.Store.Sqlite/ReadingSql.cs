using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>How rows of WeatherReading are written and read.</summary>
internal static class ReadingSql
{
    private const string ValueColumns =
        "TimeMs, DryBulbC, DewPointC, WetBulbC, RelativeHumidity, RainMm, WindMPerS, StationPressurePa, ShortwaveWPerM2, Instrument, RainMinutes, RainMinutesFrom, WeatherCode, VisibilityM";

    private const string Insert = $"""
        INSERT INTO WeatherReading (SiteId, Source, Feed, SavedAtMs, {ValueColumns})
        VALUES (
            @SiteId, @Source, @Feed, @SavedAtMs, @TimeMs,
            @DryBulbC, @DewPointC, @WetBulbC, @RelativeHumidity, @RainMm, @WindMPerS, @StationPressurePa, @ShortwaveWPerM2, @Instrument,
            @RainMinutes, @RainMinutesFrom, @WeatherCode, @VisibilityM)
        ON CONFLICT (SiteId, TimeMs, Source, Feed)
        """;

    public const string AddNew = $"{Insert} DO NOTHING";

    // Run over the new rows too: merging a reading with itself changes nothing, and the list may tell one hour twice.
    // The three humidities are one value told in three ways, so they are replaced together:
    // a kept dew point would otherwise overrule a later wet bulb for ever, unseen.
    public const string Merge = """
        UPDATE WeatherReading SET
            DryBulbC = COALESCE(@DryBulbC, DryBulbC),
            DewPointC = CASE WHEN @HasHumidity = 1 THEN @DewPointC ELSE DewPointC END,
            WetBulbC = CASE WHEN @HasHumidity = 1 THEN @WetBulbC ELSE WetBulbC END,
            RelativeHumidity = CASE WHEN @HasHumidity = 1 THEN @RelativeHumidity ELSE RelativeHumidity END,
            Instrument = CASE WHEN @HasHumidity = 1 THEN @Instrument ELSE Instrument END,
            RainMinutes = CASE WHEN @RainMm IS NULL THEN RainMinutes ELSE @RainMinutes END,
            RainMinutesFrom = CASE WHEN @RainMm IS NULL THEN RainMinutesFrom ELSE @RainMinutesFrom END,
            RainMm = COALESCE(@RainMm, RainMm),
            WindMPerS = COALESCE(@WindMPerS, WindMPerS),
            StationPressurePa = COALESCE(@StationPressurePa, StationPressurePa),
            ShortwaveWPerM2 = COALESCE(@ShortwaveWPerM2, ShortwaveWPerM2),
            WeatherCode = COALESCE(@WeatherCode, WeatherCode),
            VisibilityM = COALESCE(@VisibilityM, VisibilityM),
            SavedAtMs = @SavedAtMs
        WHERE SiteId = @SiteId AND TimeMs = @TimeMs AND Source = @Source AND Feed = @Feed
        """;

    // A slow answer may come in after a newer one.
    public const string PutWhole = $"""
        {Insert} DO UPDATE SET
            DryBulbC = excluded.DryBulbC,
            DewPointC = excluded.DewPointC,
            WetBulbC = excluded.WetBulbC,
            RelativeHumidity = excluded.RelativeHumidity,
            RainMm = excluded.RainMm,
            WindMPerS = excluded.WindMPerS,
            StationPressurePa = excluded.StationPressurePa,
            ShortwaveWPerM2 = excluded.ShortwaveWPerM2,
            Instrument = excluded.Instrument,
            RainMinutes = excluded.RainMinutes,
            RainMinutesFrom = excluded.RainMinutesFrom,
            WeatherCode = excluded.WeatherCode,
            VisibilityM = excluded.VisibilityM,
            SavedAtMs = excluded.SavedAtMs
        WHERE excluded.SavedAtMs >= SavedAtMs
        """;

    public const string Read = $"""
        SELECT Source, Feed, SavedAtMs, {ValueColumns} FROM WeatherReading
        WHERE SiteId = @siteId AND TimeMs BETWEEN @fromMs AND @toMs
        ORDER BY TimeMs, Feed
        """;

    public static object Row(string siteId, WeatherSource source, string feed, WeatherReading reading, DateTimeOffset savedAt) => new
    {
        SiteId = siteId,
        Source = StoredWord.Of(source),
        Feed = feed,
        TimeMs = reading.Time.ToUnixTimeMilliseconds(),
        reading.DryBulbC,
        reading.DewPointC,
        reading.WetBulbC,
        reading.RelativeHumidity,
        reading.RainMm,
        reading.WindMPerS,
        reading.StationPressurePa,
        reading.ShortwaveWPerM2,
        Instrument = StoredWord.Of(reading.Instrument),
        reading.RainMinutes,
        RainMinutesFrom = StoredWord.Of(reading.RainMinutesFrom),
        reading.WeatherCode,
        reading.VisibilityM,
        HasHumidity = reading.HasHumidity ? 1 : 0,
        SavedAtMs = savedAt.ToUnixTimeMilliseconds(),
    };
}

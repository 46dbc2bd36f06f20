using WitherAdvisor.Air;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>What is read of a row of WeatherReading, in the order selected.</summary>
internal sealed record ReadingRow(
    string Source,
    string Feed,
    long SavedAtMs,
    long TimeMs,
    double? DryBulbC,
    double? DewPointC,
    double? WetBulbC,
    double? RelativeHumidity,
    double? RainMm,
    double? WindMPerS,
    double? StationPressurePa,
    double? ShortwaveWPerM2,
    string? Instrument,
    double? RainMinutes,
    string? RainMinutesFrom,
    long? WeatherCode,
    double? VisibilityM)
{
    public SourcedReading ToSourced() => new(
        new WeatherReading(
            DateTimeOffset.FromUnixTimeMilliseconds(TimeMs),
            DryBulbC, DewPointC, WetBulbC, RelativeHumidity, RainMm, WindMPerS, StationPressurePa, ShortwaveWPerM2,
            StoredWord.Read<PsychrometerKind>(Instrument),
            RainMinutes, StoredWord.Read<RainMinutesOrigin>(RainMinutesFrom), (int?)WeatherCode, VisibilityM),
        StoredWord.Read<WeatherSource>(Source)!.Value,
        Feed.Length == 0 ? null : Feed,
        DateTimeOffset.FromUnixTimeMilliseconds(SavedAtMs));
}

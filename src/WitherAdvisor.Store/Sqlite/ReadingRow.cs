using WitherAdvisor.Weather;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>What is read of a row of WeatherReading, in the order selected.</summary>
internal sealed record ReadingRow(
    long TimeMs,
    double? DryBulbC,
    double? DewPointC,
    double? WetBulbC,
    double? RelativeHumidity,
    double? RainMm,
    double? WindMPerS,
    double? StationPressurePa,
    double? ShortwaveWPerM2)
{
    public WeatherReading ToReading() => new(
        DateTimeOffset.FromUnixTimeMilliseconds(TimeMs),
        DryBulbC, DewPointC, WetBulbC, RelativeHumidity, RainMm, WindMPerS, StationPressurePa, ShortwaveWPerM2);
}

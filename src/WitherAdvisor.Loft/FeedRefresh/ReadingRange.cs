using WitherAdvisor.Readings;

namespace WitherAdvisor.Loft.FeedRefresh;

/// <summary>
/// Where a value of a reading may lie, whoever gives it: what is beyond is a fault of an instrument, a hand or a feed. The
/// only such table; a test holds the fields of requests to it.
/// </summary>
/// <param name="Name">As requests and notes call it.</param>
/// <param name="Unit">Of the two ends.</param>
/// <param name="Of">Its value in that unit; null where a reading has none.</param>
/// <param name="Without">The reading as if nobody had told it.</param>
public sealed record ReadingRange(
    string Name, string Unit, double Least, double Most, Func<WeatherReading, double?> Of, Func<WeatherReading, WeatherReading> Without)
{
    private const double PercentPerWhole = 100;
    private const double PascalPerHectopascal = 100;

    // So that 100 % is not found a hair above 100.
    private const int DigitsThatCount = 10;

    public static IReadOnlyList<ReadingRange> All { get; } =
    [
        new("dew_point_c", "°C", -60, 50, reading => reading.DewPointC, reading => reading with { DewPointC = null }),
        new("dry_bulb_c", "°C", -40, 60, reading => reading.DryBulbC, reading => reading with { DryBulbC = null }),
        new("rain_minutes", "min", 1, 1440, reading => reading.RainMinutes, reading => reading with { RainMinutes = null }),
        new("rain_mm", "mm", 0, 300, reading => reading.RainMm, reading => reading with { RainMm = null }),
        new("relative_humidity_percent", "%", 1, 100, PercentHumidity, reading => reading with { RelativeHumidity = null }),
        new("shortwave_w_per_m2", "W/m²", 0, 1500, reading => reading.ShortwaveWPerM2, reading => reading with { ShortwaveWPerM2 = null }),
        new("station_pressure_hpa", "hPa", 500, 1100, reading => reading.StationPressurePa / PascalPerHectopascal, reading => reading with { StationPressurePa = null }),
        new("visibility_m", "m", 0, 100000, reading => reading.VisibilityM, reading => reading with { VisibilityM = null }),
        new("wet_bulb_c", "°C", -40, 50, reading => reading.WetBulbC, reading => reading with { WetBulbC = null }),
        new("wind_m_per_s", "m/s", 0, 75, reading => reading.WindMPerS, reading => reading with { WindMPerS = null }),
    ];

    /// <summary>Whether a reading's value lies there, or it has none.</summary>
    public bool Holds(WeatherReading reading) => Of(reading) is not { } value || (value >= Least && value <= Most);

    private static double? PercentHumidity(WeatherReading reading) =>
        reading.RelativeHumidity is { } share ? Math.Round(share * PercentPerWhole, DigitsThatCount) : null;
}

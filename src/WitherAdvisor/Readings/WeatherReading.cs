using WitherAdvisor.Air;

namespace WitherAdvisor.Readings;

/// <summary>One reading of the weather, by hand, by instrument or from a forecast. Null is unknown, never 0.</summary>
/// <param name="Time">The instant it is valid for. Temperature, humidity, wind and pressure are of that instant; radiation is of the hour before it, rain of the time that <paramref name="RainMinutes"/> says.</param>
/// <param name="DryBulbC">°C.</param>
/// <param name="DewPointC">°C. Of the three humidities the first known counts: dew point, wet bulb, relative humidity.</param>
/// <param name="WetBulbC">Wet bulb as read on <paramref name="Instrument"/>, °C; thermodynamic where that is null.</param>
/// <param name="RelativeHumidity">Fraction, 0 to 1.</param>
/// <param name="RainMm">Rain of the time before that <paramref name="RainMinutes"/> says, mm.</param>
/// <param name="WindMPerS">At 10 m height, m/s.</param>
/// <param name="StationPressurePa">At the station's own elevation, Pa.</param>
/// <param name="ShortwaveWPerM2">Mean global radiation of the hour before, W/m².</param>
/// <param name="Instrument">On what the wet bulb was read; it travels with the humidities.</param>
/// <param name="RainMinutes">Minutes before <paramref name="Time"/> in which the rain fell; null where nobody said: then <see cref="RainSteps"/> tell.</param>
/// <param name="RainMinutesFrom">Who tells those minutes; null where that is the one who gave the reading.</param>
/// <param name="WeatherCode">Present weather, by table 4677 of the World Meteorological Organization.</param>
/// <param name="VisibilityM">How far one sees, m.</param>
public sealed record WeatherReading(
    DateTimeOffset Time,
    double? DryBulbC = null,
    double? DewPointC = null,
    double? WetBulbC = null,
    double? RelativeHumidity = null,
    double? RainMm = null,
    double? WindMPerS = null,
    double? StationPressurePa = null,
    double? ShortwaveWPerM2 = null,
    PsychrometerKind? Instrument = null,
    double? RainMinutes = null,
    RainMinutesOrigin? RainMinutesFrom = null,
    int? WeatherCode = null,
    double? VisibilityM = null)
{
    /// <summary>The humidity is told, in one of its three ways.</summary>
    public bool HasHumidity => (DewPointC ?? WetBulbC ?? RelativeHumidity) is not null;

    /// <summary>Any value is told.</summary>
    public bool TellsAnything =>
        HasHumidity || (DryBulbC ?? RainMm ?? WindMPerS ?? StationPressurePa ?? ShortwaveWPerM2 ?? WeatherCode ?? VisibilityM) is not null;
}

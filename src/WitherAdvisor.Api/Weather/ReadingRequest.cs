using WitherAdvisor.Air;
using WitherAdvisor.Fields;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Api.Weather;

/// <summary>
/// One reading of the weather. What is left out is unknown, never 0. Of the three humidities the first known
/// counts: dew point, wet bulb, relative humidity.
/// </summary>
public sealed record ReadingRequest : ICrossChecked
{
    /// <summary>Instruments that round both temperatures may show a dew point just above the dry bulb in fog.</summary>
    internal const double DewPointRoundingK = 0.2;

    /// <summary>The instant it is valid for. Radiation is of the hour before it, rain of the time before it that <c>rain_minutes</c> says, all else of that instant.</summary>
    /// <example>2026-03-01T10:00:00+05:30</example>
    public required DateTimeOffset Time { get; init; }

    /// <summary>Dry bulb.</summary>
    /// <example>19.4</example>
    [Measured(-40, 60)]
    public double? DryBulbC { get; init; }

    /// <summary>Dew point.</summary>
    /// <example>16.9</example>
    [Measured(-60, 50)]
    public double? DewPointC { get; init; }

    /// <summary>Wet bulb as read. With an instrument it is turned into the thermodynamic one at station pressure.</summary>
    /// <example>17.8</example>
    [Measured(-40, 50)]
    public double? WetBulbC { get; init; }

    /// <summary>
    /// On what the wet bulb was read: aspirated (a fan), sling (whirled), screen (a light draught), unventilated (on a
    /// wall). Instruments differ by up to 10 % of the depression. Left out, the wet bulb is taken as thermodynamic, as
    /// an aspirated instrument reads it.
    /// </summary>
    /// <example>aspirated</example>
    public PsychrometerKind? Instrument { get; init; }

    /// <summary>Relative humidity.</summary>
    /// <example>85</example>
    [Measured(1, 100)]
    public double? RelativeHumidityPercent { get; init; }

    /// <summary>Rain of the time before that <c>rain_minutes</c> says.</summary>
    /// <example>0.4</example>
    [Measured(0, 300)]
    public double? RainMm { get; init; }

    /// <summary>
    /// How long before <c>time</c> the rain was gathered. Left out, the spacing of the readings tells: in a regular row of a
    /// few minutes up to 6 h the rain of each is of that step, else of the hour before; the answer says where it matters.
    /// </summary>
    /// <example>15</example>
    [Measured(1, 1440)]
    public double? RainMinutes { get; init; }

    /// <summary>Who tells <c>rain_minutes</c>: the one who gives the reading (told, as when left out), or the spacing of readings, as the service says of what it kept.</summary>
    /// <example>told</example>
    public RainMinutesOrigin? RainMinutesFrom { get; init; }

    /// <summary>Wind at 10 m height.</summary>
    /// <example>1.5</example>
    [Measured(0, 75)]
    public double? WindMPerS { get; init; }

    /// <summary>Air pressure at the station, not reduced to sea level.</summary>
    /// <example>845.6</example>
    [Measured(500, 1100)]
    public double? StationPressureHpa { get; init; }

    /// <summary>Mean global radiation of the hour before.</summary>
    /// <example>420</example>
    [Measured(0, 1500)]
    public double? ShortwaveWPerM2 { get; init; }

    /// <summary>Present weather by table 4677 of the World Meteorological Organization, as feeds shorten it: 45 and 48 fog, 51 to 57 drizzle. It counts beside dry_bulb_c.</summary>
    /// <example>45</example>
    [Measured(0, 99)]
    public int? WeatherCode { get; init; }

    /// <summary>How far one sees. It counts beside dry_bulb_c.</summary>
    /// <example>400</example>
    [Measured(0, 100000)]
    public double? VisibilityM { get; init; }

    public IEnumerable<FieldError> CrossCheck()
    {
        if (WetBulbC > DryBulbC)
        {
            yield return FieldError.Of("wet_bulb_c", $"{WetBulbC}", $"at most dry_bulb_c, {DryBulbC} °C");
        }

        if (RainMinutes is { } minutes && RainMm is null)
        {
            yield return FieldError.Of("rain_minutes", $"{minutes}", "left out where rain_mm is not given");
        }

        if (RainMinutesFrom is { } origin && RainMinutes is null)
        {
            yield return FieldError.Of("rain_minutes_from", $"\"{origin.ToString().ToLowerInvariant()}\"", "left out where rain_minutes is not given");
        }

        foreach (FieldError error in InstrumentChecks.Of(this))
        {
            yield return error;
        }

        if (DewPointC > DryBulbC + DewPointRoundingK)
        {
            yield return FieldError.Of("dew_point_c", $"{DewPointC}", $"at most dry_bulb_c, {DryBulbC} °C");
        }

        if ((DryBulbC ?? DewPointC ?? WetBulbC ?? RelativeHumidityPercent
            ?? RainMm ?? WindMPerS ?? StationPressureHpa ?? ShortwaveWPerM2 ?? VisibilityM ?? WeatherCode) is null)
        {
            yield return FieldError.Of("time", $"\"{Rfc3339.Format(Time)}\"", "a time with at least one value beside it");
        }
    }
}

using System.Collections.Frozen;

namespace WitherAdvisor.WeatherFeeds;

/// <summary>One column of hourly weather: its name on the wire, the units it may come in, and what weather on earth can be.</summary>
internal sealed class HourlyVariable
{
    private static readonly FrozenDictionary<string, Func<double, double>> ToCelsius = Units(
        ("°C", value => value),
        ("°F", value => (value - 32) / 1.8));

    // Divided and multiplied as a hand entry is, so that the same weather gives the same bits whichever way it comes in.
    public static readonly HourlyVariable DryBulbC = new("temperature_2m", "°C", ToCelsius, -60, 60);

    public static readonly HourlyVariable DewPointC = new("dew_point_2m", "°C", ToCelsius, -90, 60);

    /// <summary>A fraction. Feeds have been seen to give a little over 100 %.</summary>
    public static readonly HourlyVariable RelativeHumidity =
        new("relative_humidity_2m", "%", Units(("%", value => value / 100)), 0, 1.05);

    public static readonly HourlyVariable RainMm =
        new("precipitation", "mm", Units(("mm", value => value), ("inch", value => value * 25.4)), 0, 500);

    // The server spells miles an hour "mp/h"; a knot is 1,852 m an hour, a mile 1,609.344 m.
    public static readonly HourlyVariable WindMPerS = new("wind_speed_10m", "m/s", Units(
        ("m/s", value => value),
        ("km/h", value => value / 3.6),
        ("kn", value => value * 1_852 / 3_600),
        ("mp/h", value => value * 0.44704),
        ("mph", value => value * 0.44704)), 0, 120);

    public static readonly HourlyVariable StationPressurePa = new("surface_pressure", "hPa", Units(
        ("hPa", value => value * 100),
        ("kPa", value => value * 1_000),
        ("Pa", value => value)), 50_000, 110_000);

    public static readonly HourlyVariable ShortwaveWPerM2 =
        new("shortwave_radiation", "W/m²", Units(("W/m²", value => value)), 0, 1_500);

    public static readonly IReadOnlyList<HourlyVariable> All =
        [DryBulbC, RelativeHumidity, DewPointC, RainMm, WindMPerS, StationPressurePa, ShortwaveWPerM2];

    private readonly FrozenDictionary<string, Func<double, double>> units;
    private readonly double lowest;
    private readonly double highest;

    private HourlyVariable(
        string name, string askedUnit, FrozenDictionary<string, Func<double, double>> units, double lowest, double highest)
    {
        Name = name;
        AskedUnit = askedUnit;
        this.units = units;
        this.lowest = lowest;
        this.highest = highest;
    }

    public string Name { get; }

    public string AskedUnit { get; }

    /// <summary>How a value in a unit is brought to the unit in this variable's C# name; null for an unknown unit.</summary>
    public Func<double, double>? From(string unit) => units.GetValueOrDefault(unit);

    /// <summary>Whether weather on earth can have the value; what is not a number it cannot.</summary>
    public bool IsPossible(double value) => value >= lowest && value <= highest;

    private static FrozenDictionary<string, Func<double, double>> Units(params (string Unit, Func<double, double> From)[] units) =>
        units.ToFrozenDictionary(known => known.Unit, known => known.From, StringComparer.Ordinal);
}

namespace WitherAdvisor.Fields;

/// <summary>The unit of a number, told by the suffix of its JSON name.</summary>
/// <param name="Suffix">Last part of the name.</param>
/// <param name="Symbol">As people write it.</param>
/// <param name="Decimals">Places that a computed number of it is rounded to: finer than anybody reads an instrument.</param>
internal sealed record Unit(string Suffix, string Symbol, int Decimals)
{
    // Longer suffixes first: "_kg_per_m2" ends in "_m2" too.
    private static readonly Unit[] All =
    [
        .. new Unit[]
        {
            new("c", "°C", 2),
            new("k", "K", 2),
            new("percent", "%", 2),
            new("points", "percentage points", 2),
            new("m", "m", 1),
            new("m2", "m²", 2),
            new("mm", "mm", 2),
            new("kg", "kg", 2),
            new("kg_per_kg", "kg/kg", 4),
            new("kg_per_m2", "kg/m²", 2),
            new("m2_per_kg", "m²/kg", 3),
            new("deg", "°", 5),
            new("hpa", "hPa", 2),
            new("hours", "h", 2),
            new("hour", "h", 2),
            new("minutes", "min", 0),
            new("m_per_s", "m/s", 3),
            new("mm_per_s", "mm/s", 4),
            new("kpa_m_per_s", "kPa·m/s", 2),
            new("w_per_m2", "W/m²", 1),
            new("m3_per_s_per_m2", "m³/s per m²", 4),
            new("kw", "kW", 2),
            new("kwh", "kWh", 1),
            new("weather_code", "WMO 4677", 0),
            new("kwh_per_kg_made_tea", "kWh per kg of made tea", 2),
            new("mark", "on the scale", 2),
            new("turns", "turns", 0),
            new("fraction", "as a fraction of 1", 3),
        }.OrderByDescending(unit => unit.Suffix.Length),
    ];

    /// <summary>The unit of a number with this JSON name; null where it has none.</summary>
    public static Unit? OfName(string name) =>
        Array.Find(All, unit => name == unit.Suffix || name.EndsWith("_" + unit.Suffix, StringComparison.Ordinal));
}

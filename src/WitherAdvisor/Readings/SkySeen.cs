namespace WitherAdvisor.Readings;

/// <summary>What was seen of the sky: present weather and how far one sees.</summary>
/// <param name="WeatherCode">By table 4677 of the World Meteorological Organization, as feeds shorten it; null where nobody said.</param>
/// <param name="VisibilityM">m; null where nobody said.</param>
internal readonly record struct SkySeen(int? WeatherCode, double? VisibilityM)
{
    /// <summary>Slight, moderate and heavy drizzle: under 0.1, up to 0.5 and over 0.5 mm/h (World Meteorological Organization).</summary>
    private const double SlightMmPerH = 0.05;
    private const double ModerateMmPerH = 0.3;
    private const double HeavyMmPerH = 0.5;

    /// <summary>Fog, with or without rime.</summary>
    public bool IsFog => WeatherCode is >= 40 and <= 49;

    /// <summary>Rain of drizzle by its code, mm/h; null where it does not drizzle.</summary>
    public double? DrizzleMmPerH => WeatherCode switch
    {
        50 or 51 => SlightMmPerH,
        52 or 53 or 56 => ModerateMmPerH,
        54 or 55 or 57 => HeavyMmPerH,
        _ => null,
    };
}

using WitherAdvisor.Air;

namespace WitherAdvisor.Sites;

/// <summary>Where the loft stands and how it withers.</summary>
/// <param name="ElevationM">Metres above sea level.</param>
/// <param name="LatitudeDeg">Degrees north.</param>
/// <param name="LongitudeDeg">Degrees east.</param>
/// <param name="HotAirC">Dry bulb of the hot air before mixing, °C; common practice, no published source: about 52.8 °C (127 °F).</param>
/// <param name="Style">What the site steers by and its limits.</param>
/// <param name="StationPressurePa">Measured pressure at the loft, Pa; it wins over elevation. Null where unknown.</param>
public sealed record Site(
    double ElevationM,
    double LatitudeDeg,
    double LongitudeDeg,
    double HotAirC,
    WitherStyle Style,
    double? StationPressurePa = null)
{
    public const double UsualHotAirC = 52.8;

    /// <summary>What the site knows of its heat beside its temperature.</summary>
    public HeatSource Heat { get; init; } = new();

    /// <summary>Pressure of the air at the loft, Pa.</summary>
    public double PressurePa => StationPressurePa ?? StandardAtmosphere.PressurePa(ElevationM);
}

using WitherAdvisor.Air;

namespace WitherAdvisor.Ambient;

/// <summary>The heat that there is for a square metre of trough, by the hour from loading.</summary>
/// <param name="HotAirC">Dry bulb of the hot air before mixing, °C.</param>
/// <param name="MostKWPerM2">Most heat, kW per m² of trough; null where it is not known to be short.</param>
/// <param name="Spans">When there is heat, hours from loading; null for always.</param>
internal sealed record HeatSupply(double HotAirC, double? MostKWPerM2 = null, IReadOnlyList<(double FromHour, double ToHour)>? Spans = null)
{
    /// <summary>As much as is asked for, whenever.</summary>
    public static HeatSupply Plenty(double hotAirC) => new(hotAirC);

    /// <summary>Whether there is heat at an hour.</summary>
    public bool IsThere(double hour) => MostKWPerM2 is not 0 && (Spans is null || Spans.Any(span => span.FromHour <= hour && hour < span.ToHour));

    /// <summary>The warmest plenum that the supply makes of ambient air, °C, for a flow at the plenum state (m³/s per m²).</summary>
    public double WarmestPlenumC(double hour, AirState ambient, double flowM3PerSM2)
    {
        if (!IsThere(hour))
        {
            return ambient.DryBulbC;
        }

        double mixedC = Math.Max(HotAirC, ambient.DryBulbC);
        return MostKWPerM2 is { } most ? Math.Min(mixedC, ambient.DryBulbC + RiseK(most, ambient, flowM3PerSM2)) : mixedC;
    }

    /// <summary>The same supply seen by a batch loaded some hours later.</summary>
    public HeatSupply From(double hour) =>
        this with { Spans = Spans is null ? null : [.. Spans.Select(span => (span.FromHour - hour, span.ToHour - hour))] };

    /// <summary>Warmer air is thinner: the same flow by volume carries less of it, so the rise is more than in proportion to the heat.</summary>
    private static double RiseK(double kWPerM2, AirState ambient, double flowM3PerSM2)
    {
        const double ZeroC = 273.15;
        double heatKJPerKgK = 1.006 + 1.86 * ambient.HumidityRatio;
        double atOnceK = kWPerM2 * ambient.SpecificVolumeM3PerKg / (flowM3PerSM2 * heatKJPerKgK);
        double kelvin = ambient.DryBulbC + ZeroC;
        return atOnceK < kelvin ? atOnceK * kelvin / (kelvin - atOnceK) : double.PositiveInfinity;
    }
}

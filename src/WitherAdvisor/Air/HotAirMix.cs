namespace WitherAdvisor.Air;

/// <summary>
/// Hot air mixed into ambient air before the fan. The hot air is ambient air heated indirectly, so mixing
/// changes the dry bulb and leaves the humidity ratio as it was.
/// </summary>
/// <remarks>Adiabatic mixing of two streams by mass of dry air: ASHRAE Handbook – Fundamentals 2017 (SI), ch. 1, eq. 46.</remarks>
public static class HotAirMix
{
    /// <summary>No loft is hotter; well below boiling at any elevation, where humidity ratios lose their meaning.</summary>
    private const double HighestWetBulbC = 60;

    /// <summary>Plenum air from a share of hot air (mass fraction of dry air, 0 to 1) at <paramref name="hotAirC"/> (°C).</summary>
    public static AirState Plenum(AirState ambient, double hotAirC, double share) =>
        AdiabaticMixing.Mix(ambient, 1 - share, ambient with { DryBulbC = hotAirC }, share);

    /// <summary>Share of hot air (mass fraction of dry air) that brings ambient air to a plenum dry bulb in °C.</summary>
    public static double Share(AirState ambient, double hotAirC, double plenumDryBulbC)
    {
        double hot = MoistAir.EnthalpyKJPerKg(hotAirC, ambient.HumidityRatio) - ambient.EnthalpyKJPerKg;
        double wanted = MoistAir.EnthalpyKJPerKg(plenumDryBulbC, ambient.HumidityRatio) - ambient.EnthalpyKJPerKg;
        return wanted / hot;
    }

    /// <summary>
    /// The least heated plenum air with at least the wanted hygrometric difference in K: the ambient air itself
    /// where that is dry enough.
    /// </summary>
    public static AirState PlenumForHygrometricDifference(AirState ambient, double wantedK)
    {
        // At a fixed difference the psychrometric equation has the wet bulb as its one unknown.
        double unheatedWetBulbC = ambient.DryBulbC - wantedK;
        double wetBulbC = WetBulbRoot.FindC(
            wetBulb => MoistAir.HumidityRatioFromWetBulb(wetBulb + wantedK, wetBulb, ambient.PressurePa, ambient.Formulation)
                - ambient.HumidityRatio,
            unheatedWetBulbC, HighestWetBulbC);
        return wetBulbC > unheatedWetBulbC ? ambient with { DryBulbC = wetBulbC + wantedK } : ambient;
    }

    /// <summary>Heat to bring ambient air to the plenum dry bulb, kW, for a volume flow in m³/s at the plenum state.</summary>
    public static double HeatKW(AirState ambient, AirState plenum, double plenumFlowM3PerS) =>
        plenumFlowM3PerS / plenum.SpecificVolumeM3PerKg * (plenum.EnthalpyKJPerKg - ambient.EnthalpyKJPerKg);
}

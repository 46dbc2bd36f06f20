namespace WitherAdvisor.Air;

/// <summary>Two streams of moist air that become one, with no heat gained or lost.</summary>
/// <remarks>ASHRAE Handbook – Fundamentals 2017 (SI), ch. 1, eq. 46.</remarks>
public static class AdiabaticMixing
{
    /// <summary>
    /// The mixed stream at the first stream's pressure. Enthalpy and humidity ratio are means by mass of DRY air;
    /// the flows may be in any one unit of it. Where cold and warm moist air meet, the mix may be supersaturated.
    /// </summary>
    public static AirState Mix(AirState first, double firstDryAirKgPerS, AirState second, double secondDryAirKgPerS)
    {
        double share = secondDryAirKgPerS / (firstDryAirKgPerS + secondDryAirKgPerS);
        double enthalpyKJPerKg = (1 - share) * first.EnthalpyKJPerKg + share * second.EnthalpyKJPerKg;
        double humidityRatio = (1 - share) * first.HumidityRatio + share * second.HumidityRatio;
        return first with
        {
            DryBulbC = MoistAir.DryBulbFromEnthalpyC(enthalpyKJPerKg, humidityRatio),
            HumidityRatio = humidityRatio,
        };
    }
}

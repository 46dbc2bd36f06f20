namespace WitherAdvisor.Air;

/// <summary>The equations of moist air that <see cref="AirState"/> is made of.</summary>
/// <remarks>Numbers of equations are those of ASHRAE Handbook – Fundamentals 2017 (SI), ch. 1.</remarks>
public static class MoistAir
{
    /// <summary>Molar mass of water over that of dry air.</summary>
    public const double MolarMassRatio = 0.621945;

    /// <summary>Humidity ratio, kg per kg of dry air, from vapour pressure and total pressure in Pa (eq. 20).</summary>
    public static double HumidityRatio(double vapourPressurePa, double pressurePa) =>
        MolarMassRatio * vapourPressurePa / (pressurePa - vapourPressurePa);

    /// <summary>Humidity ratio of saturated air, kg per kg of dry air (eq. 21).</summary>
    public static double SaturatedHumidityRatio(
        double temperatureC, double pressurePa, MoistAirFormulation formulation = MoistAirFormulation.RealGas) =>
        HumidityRatio(Saturation.VapourPressurePa(temperatureC, pressurePa, formulation), pressurePa);

    /// <summary>Humidity ratio from dry bulb and thermodynamic wet bulb in °C (eq. 33 over water, 35 over ice).</summary>
    public static double HumidityRatioFromWetBulb(
        double dryBulbC, double wetBulbC, double pressurePa, MoistAirFormulation formulation)
    {
        double saturated = SaturatedHumidityRatio(wetBulbC, pressurePa, formulation);
        return wetBulbC >= Saturation.TriplePointC
            ? ((2501 - 2.326 * wetBulbC) * saturated - 1.006 * (dryBulbC - wetBulbC))
                / (2501 + 1.86 * dryBulbC - 4.186 * wetBulbC)
            : ((2830 - 0.24 * wetBulbC) * saturated - 1.006 * (dryBulbC - wetBulbC))
                / (2830 + 1.86 * dryBulbC - 2.1 * wetBulbC);
    }

    /// <summary>Enthalpy, kJ per kg of dry air, from dry bulb in °C and humidity ratio (eq. 30).</summary>
    public static double EnthalpyKJPerKg(double dryBulbC, double humidityRatio) =>
        1.006 * dryBulbC + humidityRatio * (2501 + 1.86 * dryBulbC);

    /// <summary>Dry bulb in °C from enthalpy in kJ per kg of dry air and humidity ratio (eq. 30, turned round).</summary>
    public static double DryBulbFromEnthalpyC(double enthalpyKJPerKg, double humidityRatio) =>
        (enthalpyKJPerKg - 2501 * humidityRatio) / (1.006 + 1.86 * humidityRatio);

    /// <summary>Specific volume, m³ per kg of dry air (eq. 26).</summary>
    public static double SpecificVolumeM3PerKg(double dryBulbC, double humidityRatio, double pressurePa) =>
        287.042 * (dryBulbC + Saturation.KelvinAtZeroC) * (1 + 1.607858 * humidityRatio) / pressurePa;
}

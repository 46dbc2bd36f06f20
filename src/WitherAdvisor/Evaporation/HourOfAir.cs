namespace WitherAdvisor.Evaporation;

/// <summary>One hour as the hourly Penman–Monteith equation wants it.</summary>
/// <param name="TemperatureC">Mean of the hour, °C.</param>
/// <param name="DeficitKPa">Vapour-pressure deficit, kPa, 0 or above.</param>
/// <param name="SlopeKPaPerK">Of the saturation curve, kPa/K.</param>
/// <param name="PsychrometricConstantKPaPerK">kPa/K.</param>
/// <param name="WindAtTwoMetresMPerS">m/s.</param>
/// <param name="NetRadiationMJPerM2">MJ/m² in the hour.</param>
/// <param name="IsDay">Whether the sun is up.</param>
public readonly record struct HourOfAir(
    double TemperatureC,
    double DeficitKPa,
    double SlopeKPaPerK,
    double PsychrometricConstantKPaPerK,
    double WindAtTwoMetresMPerS,
    double NetRadiationMJPerM2,
    bool IsDay)
{
    /// <summary>From temperature (°C), vapour pressure (kPa), wind (m/s at 2 m), net radiation (MJ/m²) and pressure (kPa).</summary>
    public static HourOfAir Of(
        double temperatureC, double vapourKPa, double windAtTwoMetresMPerS, double netRadiationMJPerM2, bool isDay, double pressureKPa)
    {
        double saturationKPa = FaoAir.SaturationKPa(temperatureC);
        return new(
            temperatureC,
            Math.Max(saturationKPa - vapourKPa, 0),
            FaoAir.SlopeKPaPerK(saturationKPa, temperatureC),
            FaoAir.PsychrometricConstantKPaPerK(pressureKPa),
            windAtTwoMetresMPerS,
            netRadiationMJPerM2,
            isDay);
    }
}

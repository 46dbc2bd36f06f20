namespace WitherAdvisor.Evaporation;

/// <summary>The air as FAO-56 has it, in kPa. Its formulas stay together: they were fitted as one.</summary>
/// <remarks>Allen, Pereira, Raes and Smith (1998), Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, ch. 3.</remarks>
public static class FaoAir
{
    /// <summary>Psychrometer coefficient of an instrument aspirated at 5 m/s, 1/K (eq. 16).</summary>
    public const double AspiratedPsychrometerPerK = 0.000662;

    /// <summary>Pressure, kPa, by elevation in m (eq. 7).</summary>
    public static double PressureKPa(double elevationM) =>
        101.3 * Math.Pow((293 - 0.0065 * elevationM) / 293, 5.26);

    /// <summary>Psychrometric constant, kPa/K, from pressure in kPa (eq. 8).</summary>
    public static double PsychrometricConstantKPaPerK(double pressureKPa) => 0.665e-3 * pressureKPa;

    /// <summary>Saturation vapour pressure e°, kPa, at a temperature in °C (eq. 11).</summary>
    public static double SaturationKPa(double temperatureC) =>
        0.6108 * Math.Exp(17.27 * temperatureC / (temperatureC + 237.3));

    /// <summary>Slope of the saturation curve, kPa/K, from e° (kPa) and its temperature (°C) (eq. 13).</summary>
    public static double SlopeKPaPerK(double saturationKPa, double temperatureC) =>
        4098 * saturationKPa / ((temperatureC + 237.3) * (temperatureC + 237.3));

    /// <summary>Vapour pressure, kPa, from dry and wet thermometer in °C and pressure in kPa (eq. 15).</summary>
    public static double VapourPressureFromPsychrometerKPa(
        double dryC, double wetC, double pressureKPa, double psychrometerPerK = AspiratedPsychrometerPerK) =>
        SaturationKPa(wetC) - psychrometerPerK * pressureKPa * (dryC - wetC);

    /// <summary>Vapour pressure of a day, kPa, from its extremes in °C and relative humidity as a fraction (eq. 17).</summary>
    public static double VapourPressureOfDayKPa(
        double lowestC, double highestC, double highestRelativeHumidity, double lowestRelativeHumidity) =>
        (SaturationKPa(lowestC) * highestRelativeHumidity + SaturationKPa(highestC) * lowestRelativeHumidity) / 2;

    /// <summary>Wind at 2 m from wind at another height (m) over short grass, in the unit it came in (eq. 47).</summary>
    public static double WindAtTwoMetres(double wind, double heightM) => wind * 4.87 / Math.Log(67.8 * heightM - 5.42);
}

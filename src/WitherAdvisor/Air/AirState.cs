using WitherAdvisor.Numerics;

namespace WitherAdvisor.Air;

/// <summary>A state of moist air: dry bulb, humidity ratio and pressure; all else follows from them.</summary>
/// <param name="DryBulbC">Dry bulb temperature, °C.</param>
/// <param name="HumidityRatio">kg of water vapour per kg of dry air.</param>
/// <param name="PressurePa">Total (station) pressure, Pa.</param>
/// <param name="Formulation">How saturation is taken.</param>
/// <remarks>ASHRAE Handbook – Fundamentals 2017 (SI), ch. 1, Psychrometrics.</remarks>
public readonly record struct AirState(
    double DryBulbC,
    double HumidityRatio,
    double PressurePa,
    MoistAirFormulation Formulation = MoistAirFormulation.RealGas)
{
    private const double SolverToleranceK = 1e-9;

    /// <summary>Partial pressure of water vapour, Pa (eq. 34).</summary>
    public double VapourPressurePa => PressurePa * HumidityRatio / (MoistAir.MolarMassRatio + HumidityRatio);

    /// <summary>Relative humidity as a fraction, 0 to 1.</summary>
    public double RelativeHumidity =>
        VapourPressurePa / Saturation.VapourPressurePa(DryBulbC, PressurePa, Formulation);

    /// <summary>What the air could still take up at its own temperature, Pa; never below 0.</summary>
    public double VapourPressureDeficitPa =>
        Math.Max(Saturation.VapourPressurePa(DryBulbC, PressurePa, Formulation) - VapourPressurePa, 0);

    /// <summary>Thermodynamic wet bulb, °C (eq. 33 over water, 35 over ice).</summary>
    public double WetBulbC
    {
        get
        {
            AirState air = this;
            return WetBulbRoot.FindC(
                wetBulbC => MoistAir.HumidityRatioFromWetBulb(air.DryBulbC, wetBulbC, air.PressurePa, air.Formulation)
                    - air.HumidityRatio,
                DryBulbC - 80, DryBulbC);
        }
    }

    /// <summary>Hygrometric difference: dry bulb minus wet bulb, K. The number the trade steers by.</summary>
    public double HygrometricDifferenceK => DryBulbC - WetBulbC;

    /// <summary>Dew point (frost point below 0.01 °C), °C.</summary>
    public double DewPointC
    {
        get
        {
            AirState air = this;
            double vapourPressurePa = VapourPressurePa;
            return BracketedRoot.Find(
                dewPointC => Saturation.VapourPressurePa(dewPointC, air.PressurePa, air.Formulation) - vapourPressurePa,
                -95, DryBulbC, SolverToleranceK);
        }
    }

    /// <summary>Enthalpy, kJ per kg of dry air (eq. 30).</summary>
    public double EnthalpyKJPerKg => MoistAir.EnthalpyKJPerKg(DryBulbC, HumidityRatio);

    /// <summary>Specific volume, m³ per kg of dry air (eq. 26).</summary>
    public double SpecificVolumeM3PerKg => MoistAir.SpecificVolumeM3PerKg(DryBulbC, HumidityRatio, PressurePa);

    /// <summary>Density of the moist air, kg/m³ (eq. 9b).</summary>
    public double DensityKgPerM3 => (1 + HumidityRatio) / SpecificVolumeM3PerKg;

    /// <summary>From dry bulb (°C), relative humidity (fraction, 0 to 1) and pressure (Pa).</summary>
    public static AirState FromRelativeHumidity(
        double dryBulbC, double relativeHumidity, double pressurePa,
        MoistAirFormulation formulation = MoistAirFormulation.RealGas)
    {
        double saturationPa = Saturation.VapourPressurePa(dryBulbC, pressurePa, formulation);
        return new(dryBulbC, MoistAir.HumidityRatio(relativeHumidity * saturationPa, pressurePa), pressurePa, formulation);
    }

    /// <summary>From dry bulb and dew point (both °C) and pressure (Pa).</summary>
    public static AirState FromDewPoint(
        double dryBulbC, double dewPointC, double pressurePa,
        MoistAirFormulation formulation = MoistAirFormulation.RealGas)
    {
        double vapourPressurePa = Saturation.VapourPressurePa(dewPointC, pressurePa, formulation);
        return new(dryBulbC, MoistAir.HumidityRatio(vapourPressurePa, pressurePa), pressurePa, formulation);
    }

    /// <summary>From dry bulb and thermodynamic wet bulb (both °C) and pressure (Pa). Never drier than no vapour at all.</summary>
    public static AirState FromWetBulb(
        double dryBulbC, double wetBulbC, double pressurePa,
        MoistAirFormulation formulation = MoistAirFormulation.RealGas)
    {
        double humidityRatio = MoistAir.HumidityRatioFromWetBulb(dryBulbC, wetBulbC, pressurePa, formulation);
        return new(dryBulbC, Math.Max(humidityRatio, 0), pressurePa, formulation);
    }
}

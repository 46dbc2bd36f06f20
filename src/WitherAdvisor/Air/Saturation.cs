namespace WitherAdvisor.Air;

/// <summary>Saturation of water vapour over liquid water and over ice.</summary>
public static class Saturation
{
    /// <summary>The triple point of water in °C: below it the ice branch holds.</summary>
    public const double TriplePointC = 0.01;

    public const double KelvinAtZeroC = 273.15;

    /// <summary>Saturation pressure of pure water vapour in Pa at a temperature in °C.</summary>
    /// <remarks>ASHRAE Handbook – Fundamentals 2017 (SI), ch. 1, eq. 5 (ice) and 6 (water), after Hyland and Wexler (1983); −100 to 200 °C.</remarks>
    public static double PressurePa(double temperatureC)
    {
        double t = temperatureC + KelvinAtZeroC;
        return temperatureC < TriplePointC ? Math.Exp(LogOverIce(t)) : Math.Exp(LogOverWater(t));
    }

    /// <summary>dp_ws/dT in Pa/K at a temperature in °C: the derivative of <see cref="PressurePa"/>.</summary>
    public static double SlopePaPerK(double temperatureC)
    {
        double t = temperatureC + KelvinAtZeroC;
        double logSlope = temperatureC < TriplePointC
            ? 5.6745359e3 / (t * t) - 9.677843e-3 + 2 * 6.2215701e-7 * t + 3 * 2.0747825e-9 * t * t
                - 4 * 9.484024e-13 * t * t * t + 4.1635019 / t
            : 5.8002206e3 / (t * t) - 4.8640239e-2 + 2 * 4.1764768e-5 * t - 3 * 1.4452093e-8 * t * t
                + 6.5459673 / t;
        return PressurePa(temperatureC) * logSlope;
    }

    /// <summary>
    /// Enhancement factor: how much more vapour saturated air holds than pure vapour would, at a temperature
    /// in °C and a total pressure in Pa. Dimensionless, 1.004 at 25 °C and one atmosphere.
    /// </summary>
    /// <remarks>Buck Research Instruments, CR-1A manual (1996), appendix 1; −80 to 50 °C.</remarks>
    public static double EnhancementFactor(double temperatureC, double pressurePa)
    {
        double hPa = pressurePa / 100;
        double tt = temperatureC * temperatureC;
        return temperatureC < TriplePointC
            ? 1 + 1e-4 * (2.2 + hPa * (0.0383 + 6.4e-6 * tt))
            : 1 + 1e-4 * (7.2 + hPa * (0.0320 + 5.9e-6 * tt));
    }

    /// <summary>Partial pressure of water vapour in saturated air in Pa, by the chosen formulation.</summary>
    public static double VapourPressurePa(double temperatureC, double pressurePa, MoistAirFormulation formulation)
    {
        double pure = PressurePa(temperatureC);
        return formulation == MoistAirFormulation.RealGas
            ? pure * EnhancementFactor(temperatureC, pressurePa)
            : pure;
    }

    private static double LogOverWater(double t) =>
        -5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t * t
        - 1.4452093e-8 * t * t * t + 6.5459673 * Math.Log(t);

    private static double LogOverIce(double t) =>
        -5.6745359e3 / t + 6.3925247 - 9.677843e-3 * t + 6.2215701e-7 * t * t
        + 2.0747825e-9 * t * t * t - 9.484024e-13 * t * t * t * t + 4.1635019 * Math.Log(t);
}

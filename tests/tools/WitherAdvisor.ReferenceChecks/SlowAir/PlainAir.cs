namespace WitherAdvisor.ReferenceChecks.SlowAir;

/// <summary>
/// Moist air at one pressure, written a second time from the handbook, apart from the library: powers summed term by
/// term, slopes by difference, roots by halving. Slow and hard to get wrong.
/// </summary>
/// <param name="PressurePa">Total pressure, Pa.</param>
/// <param name="RealGas">With Buck's enhancement factor, or without.</param>
/// <remarks>ASHRAE Handbook – Fundamentals 2017 (SI), ch. 1: eq. 5, 6, 20, 33, 35; Buck (1996) for the enhancement factor.</remarks>
public sealed record PlainAir(double PressurePa, bool RealGas)
{
    private const double Ratio = 0.621945;
    private const double ZeroCInK = 273.15;
    private const double FreezingC = 0.01;
    private const int Halvings = 60;
    private const double SlopeStepK = 1e-3;

    /// <summary>C1 to C7 of eq. 5: over ice; powers −1 to 4 of the temperature in K, then its logarithm.</summary>
    private static readonly double[] Ice =
        [-5.6745359e3, 6.3925247, -9.677843e-3, 6.2215701e-7, 2.0747825e-9, -9.484024e-13, 4.1635019];

    /// <summary>C8 to C13 of eq. 6: over water, in the same order; it has no fourth power.</summary>
    private static readonly double[] Water =
        [-5.8002206e3, 1.3914993, -4.8640239e-2, 4.1764768e-5, -1.4452093e-8, 0, 6.5459673];

    /// <summary>Partial pressure of vapour in saturated air, Pa.</summary>
    public double SaturatedPa(double temperatureC)
    {
        bool ice = temperatureC < FreezingC;
        double kelvin = temperatureC + ZeroCInK;
        double[] c = ice ? Ice : Water;
        double logarithm = c[6] * Math.Log(kelvin);
        double power = 1 / kelvin;
        for (int i = 0; i < 6; i++)
        {
            logarithm += c[i] * power;
            power *= kelvin;
        }

        return Math.Exp(logarithm) * (RealGas ? Enhancement(temperatureC, ice) : 1);
    }

    /// <summary>Slope of <see cref="SaturatedPa"/>, Pa/K.</summary>
    public double SaturatedPaPerK(double temperatureC) =>
        (SaturatedPa(temperatureC + SlopeStepK) - SaturatedPa(temperatureC - SlopeStepK)) / (2 * SlopeStepK);

    public double VapourPa(double humidityRatio) => PressurePa * humidityRatio / (Ratio + humidityRatio);

    public double HumidityRatio(double vapourPa) => Ratio * vapourPa / (PressurePa - vapourPa);

    /// <summary>m³ of moist air that hold 1 kg of dry air.</summary>
    public double SpecificVolume(double temperatureC, double humidityRatio) =>
        0.287042 * (temperatureC + ZeroCInK) * (1 + 1.607858 * humidityRatio) / (PressurePa / 1000);

    /// <summary>Thermodynamic wet bulb, °C. Where a wick of water and one of ice would both do, it is water.</summary>
    public double WetBulbC(double dryBulbC, double humidityRatio)
    {
        if (WaterWouldDo(dryBulbC, humidityRatio))
        {
            return Halved(FreezingC, dryBulbC, wet => HumidityRatioOverWater(dryBulbC, wet) < humidityRatio);
        }

        return Halved(dryBulbC - 100, Math.Min(dryBulbC, FreezingC), wet => HumidityRatioOverIce(dryBulbC, wet) < humidityRatio);
    }

    /// <summary>Near freezing a wick of water and one of ice may both satisfy their equation, at temperatures of their own.</summary>
    public bool WaterAndIceWouldBothDo(double dryBulbC, double humidityRatio) =>
        WaterWouldDo(dryBulbC, humidityRatio) && HumidityRatioOverIce(dryBulbC, 0) >= humidityRatio;

    private bool WaterWouldDo(double dryBulbC, double humidityRatio) =>
        dryBulbC >= FreezingC && HumidityRatioOverWater(dryBulbC, FreezingC) <= humidityRatio;

    /// <summary>Eq. 33.</summary>
    private double HumidityRatioOverWater(double dryC, double wetC) =>
        ((2501 - 2.326 * wetC) * HumidityRatio(SaturatedPa(wetC)) - 1.006 * (dryC - wetC)) / (2501 + 1.86 * dryC - 4.186 * wetC);

    /// <summary>Eq. 35.</summary>
    private double HumidityRatioOverIce(double dryC, double wetC) =>
        ((2830 - 0.24 * wetC) * HumidityRatio(SaturatedPa(wetC)) - 1.006 * (dryC - wetC)) / (2830 + 1.86 * dryC - 2.1 * wetC);

    private double Enhancement(double temperatureC, bool ice)
    {
        double hPa = PressurePa / 100;
        return ice
            ? 1.00022 + hPa * (3.83e-6 + 6.4e-10 * temperatureC * temperatureC)
            : 1.00072 + hPa * (3.20e-6 + 5.9e-10 * temperatureC * temperatureC);
    }

    private static double Halved(double low, double high, Func<double, bool> isTooLow)
    {
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            if (isTooLow(middle))
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }
}

using WitherAdvisor.Canopy;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Evaporation;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>Water of the canopy that is still on leaf which was plucked, shaken and carried, kg/kg.</summary>
/// <param name="RainKgPerKg">From rain.</param>
/// <param name="DewKgPerKg">From dew.</param>
/// <param name="FogKgPerKg">From fog and drizzle.</param>
/// <param name="UnknownRainKgPerKg">What rain in unknown hours is expected to add.</param>
/// <param name="StandardDeviation">Of all of it.</param>
internal readonly record struct CarriedWater(
    double RainKgPerKg, double DewKgPerKg, double FogKgPerKg, double UnknownRainKgPerKg, double StandardDeviation)
{
    /// <summary>One-sided area of plucked shoots, m² per kg fresh (from memory).</summary>
    public const double LeafAreaM2PerKg = 4.5;

    /// <summary>Chance that it rained in hours of which nothing is known (from memory: about every third day in tea).</summary>
    public const double ChanceOfRain = 0.35;

    /// <summary>Leaf called dry still carries, or does not, this much, kg/kg (from memory).</summary>
    public const double LeastError = 0.012;

    public static CarriedWater Of(LeafFeatures features, WitherCoefficients coefficients)
    {
        double kgPerKgPerMm = KgPerKgPerMm(coefficients);
        double wettedMm = features.UnknownRainMm;
        double unknown = Math.Sqrt(ChanceOfRain * (1 - ChanceOfRain)) * wettedMm;
        double unsure = features.DryingErrorMm;
        double scale = coefficients.Spreads.SurfaceRetention * (features.RainMm + features.DewMm + features.FogMm + ChanceOfRain * wettedMm);
        double error = kgPerKgPerMm * Math.Sqrt(unknown * unknown + unsure * unsure + scale * scale);
        return new(
            kgPerKgPerMm * features.RainMm,
            kgPerKgPerMm * features.DewMm,
            kgPerKgPerMm * features.FogMm,
            kgPerKgPerMm * ChanceOfRain * wettedMm,
            Math.Sqrt(error * error + LeastError * LeastError));
    }

    /// <summary>Water that leaf would carry had it been plucked at each instant, kg/kg, rain of unknown hours at its chance.</summary>
    public static double[] IfPluckedAt(LeafHistory history, WitherCoefficients coefficients)
    {
        RainCases rain = RainCases.Of(history.Series.Rain);
        var fog = FogDeposit.Of(history.Series);
        CanopyRun best = CanopyRun.Of(history.Demand, rain.Best, coefficients.CanopyCapacityMm, fog: fog);
        CanopyRun wet = CanopyRun.Of(history.Demand, rain.Wet, coefficients.CanopyCapacityMm, fog: fog);
        double kgPerKgPerMm = KgPerKgPerMm(coefficients);
        var carried = new double[history.Hours + 1];
        for (int hour = 0; hour <= history.Hours; hour++)
        {
            double bestMm = best.RainMm[hour] + best.DewMm[hour] + best.FogMm[hour];
            double wettedMm = wet.RainMm[hour] + wet.DewMm[hour] + wet.FogMm[hour] - bestMm;
            carried[hour] = Math.Clamp(kgPerKgPerMm * (bestMm + ChanceOfRain * wettedMm), 0, SurfaceWaterAtLoading.MostKgPerKg);
        }

        return carried;
    }

    /// <summary>Surface water of plucked leaf, kg/kg, for each mm on the leaf of the canopy: 1 mm is 1 kg/m².</summary>
    public static double KgPerKgPerMm(WitherCoefficients coefficients) =>
        coefficients.SurfaceRetention * LeafAreaM2PerKg;
}

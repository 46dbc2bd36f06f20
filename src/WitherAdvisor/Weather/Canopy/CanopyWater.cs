using WitherAdvisor.Leaf;
using WitherAdvisor.Weather.Evaporation;

namespace WitherAdvisor.Weather.Canopy;

/// <summary>Water that leaf carried when it was plucked, with what the open questions of its weather may change.</summary>
/// <param name="Best">The run of best knowledge.</param>
/// <param name="RainKgPerKg">From rain, mean over the plucking.</param>
/// <param name="DewKgPerKg">From dew.</param>
/// <param name="UnknownRainKgPerKg">What rain in unknown hours is expected to add.</param>
/// <param name="StandardDeviation">Of all of it, kg/kg.</param>
internal sealed record CanopyWater(
    CanopyRun Best, double RainKgPerKg, double DewKgPerKg, double UnknownRainKgPerKg, double StandardDeviation)
{
    /// <summary>One-sided area of plucked shoots, m² per kg fresh (from memory).</summary>
    public const double LeafAreaM2PerKg = 4.5;

    /// <summary>Chance that it rained in hours of which nothing is known (from memory: about every third day in tea).</summary>
    public const double ChanceOfRain = 0.35;

    /// <summary>Leaf called dry still carries, or does not, this much, kg/kg (from memory).</summary>
    public const double LeastError = 0.012;

    /// <summary>A canopy forgets in days: the drying trials start this long before the end, hours.</summary>
    private const int TrialH = 240;

    /// <summary>Runs the canopy as known and, to see what the open questions do, as it may also have been.</summary>
    /// <param name="evaporationError">Standard deviation of evaporation, relative.</param>
    public static CanopyWater Of(LeafHistory history, WitherCoefficients coefficients, double evaporationError)
    {
        RainCases rain = RainCases.Of(history.Series.Rain);
        HourlyDemand demand = history.Demand;
        double capacity = coefficients.CanopyCapacityMm;
        int start = history.Hours - TrialH;
        CanopyRun best = CanopyRun.Of(demand, rain.Best, capacity);
        double rainMm = history.MeanWhilePlucking(best.RainMm);
        double dewMm = history.MeanWhilePlucking(best.DewMm);
        double wettedMm = Total(history, CanopyRun.Of(demand, rain.Wet, capacity)) - rainMm - dewMm;
        double slowMm = Total(history, CanopyRun.Of(demand, rain.Late, capacity, 1 - evaporationError, start));
        double fastMm = Total(history, CanopyRun.Of(demand, rain.Early, capacity, 1 + evaporationError, start));

        double kgPerKgPerMm = KgPerKgPerMm(coefficients);
        double unknown = Math.Sqrt(ChanceOfRain * (1 - ChanceOfRain)) * wettedMm;
        double unsure = (slowMm - fastMm) / 2;
        double scale = coefficients.Spreads.SurfaceRetention * (rainMm + dewMm + ChanceOfRain * wettedMm);
        double error = kgPerKgPerMm * Math.Sqrt(unknown * unknown + unsure * unsure + scale * scale);
        return new(
            best,
            kgPerKgPerMm * rainMm,
            kgPerKgPerMm * dewMm,
            kgPerKgPerMm * ChanceOfRain * wettedMm,
            Math.Sqrt(error * error + LeastError * LeastError));
    }

    /// <summary>Water that leaf would carry had it been plucked at each instant, kg/kg, rain of unknown hours at its chance.</summary>
    public static double[] IfPluckedAt(LeafHistory history, WitherCoefficients coefficients)
    {
        RainCases rain = RainCases.Of(history.Series.Rain);
        CanopyRun best = CanopyRun.Of(history.Demand, rain.Best, coefficients.CanopyCapacityMm);
        CanopyRun wet = CanopyRun.Of(history.Demand, rain.Wet, coefficients.CanopyCapacityMm);
        double kgPerKgPerMm = KgPerKgPerMm(coefficients);
        var carried = new double[history.Hours + 1];
        for (int hour = 0; hour <= history.Hours; hour++)
        {
            double bestMm = best.RainMm[hour] + best.DewMm[hour];
            double wettedMm = wet.RainMm[hour] + wet.DewMm[hour] - bestMm;
            carried[hour] = Math.Clamp(kgPerKgPerMm * (bestMm + ChanceOfRain * wettedMm), 0, SurfaceWaterAtLoading.MostKgPerKg);
        }

        return carried;
    }

    /// <summary>Surface water of plucked leaf, kg/kg, for each mm on the leaf of the canopy: 1 mm is 1 kg/m².</summary>
    public static double KgPerKgPerMm(WitherCoefficients coefficients) =>
        coefficients.SurfaceRetention * LeafAreaM2PerKg;

    private static double Total(LeafHistory history, CanopyRun run) =>
        history.MeanWhilePlucking(run.RainMm) + history.MeanWhilePlucking(run.DewMm);
}

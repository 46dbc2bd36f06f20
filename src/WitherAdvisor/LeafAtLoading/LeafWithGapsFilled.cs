using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>What the weather did to the leaf, where some of it was forecast and never observed.</summary>
internal static class LeafWithGapsFilled
{
    /// <summary>Chance that a forecast tells of its hours no more than a hole would (from memory: rain of single hours on hills).</summary>
    private const double ChanceOfNoWorth = 0.25;

    /// <summary>
    /// The forecast gives the values; the standard deviations are those about them if one forecast in four were worth
    /// nothing. So a night forecast dry is never as sure as one that was observed dry.
    /// </summary>
    /// <param name="forecast">Only where nothing was observed.</param>
    public static LeafEstimate Estimate(
        Site site,
        IReadOnlyList<WeatherReading> readings,
        IReadOnlyList<WeatherReading> forecast,
        IReadOnlyList<RainTotal> rainTotals,
        PluckedLeaf leaf,
        WitherCoefficients coefficients,
        SpellThresholds? thresholds = null)
    {
        LeafEstimate observed = LeafFromWeather.Estimate(site, readings, rainTotals, leaf, coefficients, thresholds);
        if (forecast.Count == 0)
        {
            return observed;
        }

        // Of one instant the later in the list wins value by value.
        LeafEstimate filled = LeafFromWeather.Estimate(site, [.. forecast, .. readings], rainTotals, leaf, coefficients, thresholds);
        return filled with
        {
            SurfaceWaterKgPerKg = Widened(filled.SurfaceWaterKgPerKg, observed.SurfaceWaterKgPerKg),
            TissueMoistureWetBasis = Widened(filled.TissueMoistureWetBasis, observed.TissueMoistureWetBasis),
        };
    }

    private static Estimate Widened(Estimate filled, Estimate observed)
    {
        double apart = filled.Value - observed.Value;
        double worthless = observed.StandardDeviation * observed.StandardDeviation + apart * apart;
        double worthy = filled.StandardDeviation * filled.StandardDeviation;
        return filled with { StandardDeviation = Math.Sqrt(ChanceOfNoWorth * worthless + (1 - ChanceOfNoWorth) * worthy) };
    }
}

using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>What the weather did to the leaf, where some of it was foretold and never read.</summary>
internal static class LeafWithGapsFilled
{
    /// <summary>Chance that a forecast tells of its hours no more than a hole would (from memory: rain of single hours on hills).</summary>
    private const double ChanceOfNoWorth = 0.25;

    /// <summary>
    /// The forecast gives the values; the standard deviations are those about them if one forecast in four were worth
    /// nothing. So a night foretold dry is never as sure as one that was read dry.
    /// </summary>
    /// <param name="foretold">Only where nothing was read.</param>
    public static LeafEstimate Estimate(
        Site site,
        IReadOnlyList<WeatherReading> readings,
        IReadOnlyList<WeatherReading> foretold,
        IReadOnlyList<RainTotal> rainTotals,
        PluckedLeaf leaf,
        WitherCoefficients coefficients,
        SpellThresholds? thresholds = null)
    {
        LeafEstimate read = LeafFromWeather.Estimate(site, readings, rainTotals, leaf, coefficients, thresholds);
        if (foretold.Count == 0)
        {
            return read;
        }

        // Of one instant the later in the list wins value by value.
        LeafEstimate told = LeafFromWeather.Estimate(site, [.. foretold, .. readings], rainTotals, leaf, coefficients, thresholds);
        return told with
        {
            SurfaceWaterKgPerKg = Widened(told.SurfaceWaterKgPerKg, read.SurfaceWaterKgPerKg),
            TissueMoistureWetBasis = Widened(told.TissueMoistureWetBasis, read.TissueMoistureWetBasis),
        };
    }

    private static Estimate Widened(Estimate told, Estimate read)
    {
        double apart = told.Value - read.Value;
        double worthless = read.StandardDeviation * read.StandardDeviation + apart * apart;
        double worthy = told.StandardDeviation * told.StandardDeviation;
        return told with { StandardDeviation = Math.Sqrt(ChanceOfNoWorth * worthless + (1 - ChanceOfNoWorth) * worthy) };
    }
}

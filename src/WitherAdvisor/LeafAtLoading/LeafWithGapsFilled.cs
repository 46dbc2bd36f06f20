using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Screening;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>What the weather did to the leaf, where some of it was forecast and never observed, and some is doubted.</summary>
internal static class LeafWithGapsFilled
{
    /// <summary>Chance that a forecast tells of its hours no more than a hole would (from memory: rain of single hours on hills).</summary>
    private const double ChanceOfNoWorth = 0.25;

    /// <summary>Chance that hours which seem shifted are (from memory).</summary>
    private const double ChanceOfSunTime = 0.5;

    /// <summary>
    /// The forecast gives the values; the standard deviations are those about them if one forecast in four were worth
    /// nothing. So a night forecast dry is never as sure as one that was observed dry.
    /// </summary>
    /// <param name="forecast">Only where nothing was observed.</param>
    public static LeafEstimate Estimate(
        Site site,
        ScreenedWeather weather,
        IReadOnlyList<WeatherReading> forecast,
        IReadOnlyList<RainTotal> rainTotals,
        PluckedLeaf leaf,
        WitherCoefficients coefficients,
        SpellThresholds? thresholds = null)
    {
        LeafEstimate Of(IReadOnlyList<WeatherReading> readings) =>
            Told(site, readings, forecast, rainTotals, leaf, coefficients, thresholds);
        LeafEstimate estimate = Of(weather.Readings);
        LeafEstimate doubted = weather.LateH is null ? estimate : Widened(estimate, Of(weather.AtSunTime()), ChanceOfSunTime);
        return doubted with { Missing = [.. weather.Faults, .. estimate.Missing] };
    }

    private static LeafEstimate Told(
        Site site,
        IReadOnlyList<WeatherReading> readings,
        IReadOnlyList<WeatherReading> forecast,
        IReadOnlyList<RainTotal> rainTotals,
        PluckedLeaf leaf,
        WitherCoefficients coefficients,
        SpellThresholds? thresholds)
    {
        LeafEstimate observed = LeafFromWeather.Estimate(site, readings, rainTotals, leaf, coefficients, thresholds);
        if (forecast.Count == 0)
        {
            return observed;
        }

        // Of one instant the later in the list wins value by value.
        LeafEstimate filled = LeafFromWeather.Estimate(site, [.. forecast, .. readings], rainTotals, leaf, coefficients, thresholds);
        return Widened(filled, observed, ChanceOfNoWorth);
    }

    /// <summary>An estimate as sure as it is if, with a chance, another holds in its place.</summary>
    private static LeafEstimate Widened(LeafEstimate filled, LeafEstimate other, double chance) => filled with
    {
        SurfaceWaterKgPerKg = Widened(filled.SurfaceWaterKgPerKg, other.SurfaceWaterKgPerKg, chance),
        TissueMoistureWetBasis = Widened(filled.TissueMoistureWetBasis, other.TissueMoistureWetBasis, chance),
    };

    private static Estimate Widened(Estimate filled, Estimate other, double chance)
    {
        double apart = filled.Value - other.Value;
        double worthless = other.StandardDeviation * other.StandardDeviation + apart * apart;
        double worthy = filled.StandardDeviation * filled.StandardDeviation;
        return filled with { StandardDeviation = Math.Sqrt(chance * worthless + (1 - chance) * worthy) };
    }
}

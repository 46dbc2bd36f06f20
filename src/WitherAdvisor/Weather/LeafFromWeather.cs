using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;
using WitherAdvisor.Weather.Canopy;
using WitherAdvisor.Weather.Soil;
using WitherAdvisor.Weather.Spells;

namespace WitherAdvisor.Weather;

/// <summary>What the weather of the last days did to the leaf.</summary>
public static class LeafFromWeather
{
    /// <summary>Estimates surface water, tissue moisture and spell of leaf from the weather before it was plucked.</summary>
    /// <remarks>
    /// Readings may come in any order, at any minute and with gaps. With none at all it still answers, from usual
    /// values with wide standard deviations, and says so.
    /// </remarks>
    public static LeafEstimate Estimate(
        Site site,
        IReadOnlyList<WeatherReading> readings,
        IReadOnlyList<RainTotal> rainTotals,
        PluckedLeaf leaf,
        WitherCoefficients coefficients,
        SpellThresholds? thresholds = null)
    {
        LeafHistory history = LeafHistory.Of(site, readings, rainTotals, leaf);
        HistoryGaps gaps = HistoryGaps.Of(history.Series);
        WaterStressHistory stress = WaterStressHistory.Of(
            history.Demand, history.Series.Rain, RootZone.Tea, gaps.EvaporationError);
        CanopyWater canopy = CanopyWater.Of(history, coefficients, gaps.EvaporationError);

        Estimate surface = SurfaceWaterAtLoading.Of(leaf, canopy, gaps.TellsOfLeaf);
        Estimate tissue = TissueMoistureAtLoading.Of(
            leaf, stress.LastMean, stress.LastError, FieldToTrough.TakenFromSurfaceKgPerKg(leaf, surface), gaps.TellsOfSoil, coefficients);
        Spell spell = SpellHistory.Of(
            history, stress, canopy, CanopyWater.KgPerKgPerMm(coefficients), thresholds ?? new SpellThresholds());
        return new(surface, tissue, spell, MissingWeather.Of(history.Series, gaps, spell));
    }
}

using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Screening;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;

namespace WitherAdvisor.LeafAtLoading;

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
        LeafWeather weather = LeafWeather.Of(site, readings, rainTotals, leaf, coefficients.CanopyCapacityMm);
        Estimate surface = SurfaceWaterAtLoading.Of(leaf, weather.Features, coefficients);
        Estimate tissue = TissueMoistureAtLoading.Of(leaf, weather.Features, surface, coefficients);
        Spell spell = SpellOf(weather, coefficients, thresholds);
        return new(surface, tissue, spell, [.. Doubted(leaf), .. MissingWeather.Of(weather.History.Series, weather.Gaps, weather.Canopy, spell)]);
    }

    /// <summary>The same before any coefficient that is learned.</summary>
    /// <param name="canopyCapacityMm">C_max, which is not.</param>
    public static LeafFeatures Features(
        Site site,
        IReadOnlyList<WeatherReading> readings,
        IReadOnlyList<RainTotal> rainTotals,
        PluckedLeaf leaf,
        double canopyCapacityMm) =>
        LeafWeather.Of(site, ScreenedWeather.Of(site, readings).Readings, rainTotals, leaf, canopyCapacityMm).Features;

    /// <summary>The same beside the spell of the estimate, the weather being worked through once: a log has many batches.</summary>
    public static (LeafFeatures Features, Spell Spell) FeaturesAndSpell(
        Site site,
        IReadOnlyList<WeatherReading> readings,
        IReadOnlyList<RainTotal> rainTotals,
        PluckedLeaf leaf,
        WitherCoefficients coefficients)
    {
        LeafWeather weather = LeafWeather.Of(site, ScreenedWeather.Of(site, readings).Readings, rainTotals, leaf, coefficients.CanopyCapacityMm);
        return (weather.Features, SpellOf(weather, coefficients, null));
    }

    private static IEnumerable<Assumption> Doubted(PluckedLeaf leaf) =>
        leaf.MeasuredSurfaceWaterKgPerKg is { } weighed && weighed > SurfaceWaterAtLoading.MostKgPerKg
            ? [new Assumption.SurfaceWaterBeyondLeaf(weighed, SurfaceWaterAtLoading.MostKgPerKg)]
            : [];

    private static Spell SpellOf(LeafWeather weather, WitherCoefficients coefficients, SpellThresholds? thresholds) => SpellHistory.Of(
        weather.History, weather.Stress, weather.Canopy, CarriedWater.KgPerKgPerMm(coefficients), thresholds ?? new SpellThresholds());
}

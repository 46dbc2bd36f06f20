using WitherAdvisor.Canopy;
using WitherAdvisor.Evaporation;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;
using WitherAdvisor.Soil;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>The weather of a batch's leaf, worked through: its hours, its holes, its soil and its canopy.</summary>
internal sealed record LeafWeather(
    LeafHistory History, HistoryGaps Gaps, WaterStressHistory Stress, InterceptionStorage Canopy, LeafFeatures Features)
{
    public static LeafWeather Of(
        Site site,
        IReadOnlyList<WeatherReading> readings,
        IReadOnlyList<RainTotal> rainTotals,
        PluckedLeaf leaf,
        double canopyCapacityMm)
    {
        LeafHistory history = LeafHistory.Of(site, readings, rainTotals, leaf);
        HistoryGaps gaps = HistoryGaps.Of(history.Series);
        WaterStressHistory stress = WaterStressHistory.Of(
            history.Demand, history.Series.Rain, RootZone.Tea, DemandError.OfHistory(history.Series, gaps.IsDry));
        InterceptionStorage canopy = InterceptionStorage.Of(history, canopyCapacityMm, gaps.EvaporationError);
        return new(history, gaps, stress, canopy, new(
            canopy.RainMm, canopy.DewMm, canopy.UnknownRainMm, canopy.DryingErrorMm, gaps.TellsOfLeaf,
            stress.LastMean, stress.LastError, gaps.TellsOfSoil, FieldToTrough.Hours(leaf), leaf.Standard, canopy.FogMm));
    }
}

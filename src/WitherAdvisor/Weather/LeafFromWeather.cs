using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Weather;

/// <summary>What the weather of the last days did to the leaf.</summary>
public static class LeafFromWeather
{
    /// <summary>Estimates surface water, tissue moisture and spell of leaf from the weather before it was plucked.</summary>
    public static LeafEstimate Estimate(
        Site site,
        IReadOnlyList<WeatherReading> readings,
        IReadOnlyList<RainTotal> rainTotals,
        PluckedLeaf leaf,
        WitherCoefficients coefficients) => throw new NotSupportedException();
}

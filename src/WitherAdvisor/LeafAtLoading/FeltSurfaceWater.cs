using WitherAdvisor.Leaf;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>What a hand in the leaf tells of the water on it, kg/kg.</summary>
/// <param name="Value">Best value.</param>
/// <param name="StandardDeviation">Its standard deviation.</param>
/// <param name="Low">The feel excludes less.</param>
/// <param name="High">The feel excludes more.</param>
/// <remarks>From memory: 5 to 15 % of leaf weight after light rain or dew, 15 to 30 % after heavy rain.</remarks>
internal readonly record struct FeltSurfaceWater(double Value, double StandardDeviation, double Low, double High)
{
    public static FeltSurfaceWater Of(SurfaceFeel feel) => feel switch
    {
        SurfaceFeel.Dry => new(0.00, 0.015, 0.00, 0.02),
        SurfaceFeel.Damp => new(0.07, 0.03, 0.03, 0.11),
        SurfaceFeel.Wet => new(0.15, 0.04, 0.10, 0.20),
        _ => new(0.25, 0.05, 0.18, 0.35),
    };

    /// <summary>The hand fixes the band, the weather places the value within it, each by its precision.</summary>
    public Estimate With(Estimate weather)
    {
        double handPrecision = 1 / (StandardDeviation * StandardDeviation);
        double weatherPrecision = 1 / (weather.StandardDeviation * weather.StandardDeviation);
        double both = (handPrecision * Value + weatherPrecision * weather.Value) / (handPrecision + weatherPrecision);
        double held = Math.Clamp(both, Low, High);

        // Weather that contradicts the hand adds nothing to what the hand knows.
        double error = held == both ? 1 / Math.Sqrt(handPrecision + weatherPrecision) : StandardDeviation;
        return new Pieces().Add("felt", Value).Add("weather", held - Value).ToEstimate(error, EstimateOrigin.ByFeel);
    }

    /// <summary>By the hand alone.</summary>
    public Estimate Alone() => new Pieces().Add("felt", Value).ToEstimate(StandardDeviation, EstimateOrigin.ByFeel);
}

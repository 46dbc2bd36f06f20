using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>
/// What the weather did to the leaf, told without the coefficients that are learned: with them it gives the leaf at
/// loading, so that a log of outcomes can be read again with other coefficients and no weather.
/// </summary>
/// <param name="RainMm">On leaf of the canopy from rain, mean over the plucking, mm per unit of leaf area.</param>
/// <param name="DewMm">The same from dew, mm.</param>
/// <param name="UnknownRainMm">What rain in all hours of which nothing is known would add, mm.</param>
/// <param name="DryingErrorMm">Standard deviation of the three by how fast the canopy dried, mm.</param>
/// <param name="CanopyIsKnown">Whether enough of the last days is known to say what stood on the leaf.</param>
/// <param name="WaterStress">K_s of FAO-56 at plucking, 0 to 1.</param>
/// <param name="WaterStressStandardDeviation">Of K_s.</param>
/// <param name="SoilIsKnown">Whether K_s rests on rain that somebody knew.</param>
/// <param name="HoursFromField">Mean hours between plucking and loading.</param>
/// <param name="Standard">Standard of plucking; null where nobody said.</param>
/// <param name="FogMm">As <paramref name="DewMm"/>, from fog and drizzle, mm.</param>
public sealed record LeafFeatures(
    double RainMm,
    double DewMm,
    double UnknownRainMm,
    double DryingErrorMm,
    bool CanopyIsKnown,
    double WaterStress,
    double WaterStressStandardDeviation,
    bool SoilIsKnown,
    double HoursFromField,
    LeafStandard? Standard,
    double FogMm = 0)
{
    /// <summary>Water on the leaf at loading, kg per kg of leaf without it, by the weather alone.</summary>
    public Estimate SurfaceWaterKgPerKg(WitherCoefficients coefficients) =>
        SurfaceWaterAtLoading.ByWeather(this, coefficients);

    /// <summary>Moisture of the leaf itself at loading, wet basis, by the weather alone.</summary>
    public Estimate TissueMoistureWetBasis(WitherCoefficients coefficients) =>
        TissueMoistureAtLoading.ByWeather(this, SurfaceWaterKgPerKg(coefficients), coefficients);
}

using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>Moisture of the leaf itself at loading, wet basis: oven-dried, from the drought it grew in, or assumed.</summary>
internal static class TissueMoistureAtLoading
{
    public const double LowestWetBasis = 0.72;
    public const double HighestWetBasis = 0.83;

    /// <summary>K_s of the drought that the coefficients are stated for.</summary>
    public const double StressOfDrought = 0.3;

    /// <summary>Third leaf and stalk: stalk has 84.6 % where leaf has 76 to 77 % (from memory), so a tenth more of it adds this.</summary>
    public const double CoarseShift = 0.01;

    /// <summary>Of an oven-dried sample (from memory).</summary>
    public const double OvenError = 0.01;

    /// <summary>Between fields under the same weather (from memory).</summary>
    public const double FieldError = 0.01;

    /// <summary>Half of what the standard can shift, where nobody said which it is.</summary>
    private const double UnknownStandardError = 0.005;

    /// <summary>The best that is known of it.</summary>
    /// <param name="surface">Water on the leaf at loading: it goes first, so only what is left to lose comes from the tissue.</param>
    public static Estimate Of(PluckedLeaf leaf, LeafFeatures features, Estimate surface, WitherCoefficients coefficients) =>
        leaf.MeasuredMoistureWetBasis is double oven && oven is > 0 and < 1
            ? new(oven, OvenError, EstimateOrigin.Measured, [])
            : ByWeather(features, surface, coefficients);

    /// <summary>By the drought it grew in.</summary>
    public static Estimate ByWeather(LeafFeatures features, Estimate surface, WitherCoefficients coefficients)
    {
        double perStress = coefficients.DroughtToWetMoistureGain / (1 - StressOfDrought);
        Pieces pieces = new Pieces()
            .Add("wet_season", coefficients.DroughtMoistureWetBasis + coefficients.DroughtToWetMoistureGain)
            .Add("drought", -perStress * (1 - features.WaterStress))
            .Add("standard", features.Standard == LeafStandard.Coarse ? CoarseShift : 0)
            .HoldWithin(LowestWetBasis, HighestWetBasis);
        double surfaceLost = FieldToTrough.TakenFromSurfaceKgPerKg(features.HoursFromField, surface);
        double lost = Math.Max(FieldToTrough.LossKgPerKg(features.HoursFromField) - surfaceLost, 0);
        double lossShift = FieldToTrough.MoistureAfterWetBasis(pieces.Sum, lost) - pieces.Sum;
        pieces.Add(FieldToTrough.Code, lossShift);

        double standardError = features.Standard is null ? UnknownStandardError : 0;
        return pieces.ToEstimate(
            Root(
                perStress * features.WaterStressStandardDeviation, coefficients.Spreads.DroughtMoistureWetBasis, FieldError,
                standardError, FieldToTrough.RelativeError * lossShift),
            features.SoilIsKnown ? EstimateOrigin.FromWeather : EstimateOrigin.Assumed);
    }

    private static double Root(params ReadOnlySpan<double> parts)
    {
        double sum = 0;
        foreach (double part in parts)
        {
            sum += part * part;
        }

        return Math.Sqrt(sum);
    }
}

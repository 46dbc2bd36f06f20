using WitherAdvisor.Leaf;
using WitherAdvisor.Weather.Canopy;

namespace WitherAdvisor.Weather;

/// <summary>Water on the leaf at loading, kg/kg, from the best that is known: weighed, felt, from the weather, or assumed.</summary>
internal static class SurfaceWaterAtLoading
{
    /// <summary>No leaf holds more: above it water runs off (from memory).</summary>
    public const double MostKgPerKg = 0.35;

    /// <summary>Of a weighed sample, spun or blotted (from memory).</summary>
    public const double WeighedError = 0.02;

    /// <summary>Taken where neither hand nor weather tells: between dry leaf and damp.</summary>
    public const double AssumedKgPerKg = 0.05;
    public const double AssumedError = 0.07;

    public static Estimate Of(PluckedLeaf leaf, CanopyWater canopy, bool weatherIsKnown)
    {
        if (leaf.MeasuredSurfaceWaterKgPerKg is double weighed && double.IsFinite(weighed))
        {
            return new(Math.Clamp(weighed, 0, MostKgPerKg), WeighedError, EstimateOrigin.Measured, []);
        }

        if (leaf.SurfaceFeel is SurfaceFeel feel)
        {
            FeltSurfaceWater felt = FeltSurfaceWater.Of(feel);
            return weatherIsKnown ? felt.With(FromWeather(leaf, canopy)) : felt.Alone();
        }

        return weatherIsKnown ? FromWeather(leaf, canopy) : Assumed(leaf);
    }

    /// <summary>Water lost on the way, kg/kg: no more than there is.</summary>
    private static double Lost(PluckedLeaf leaf, Pieces pieces) =>
        Math.Min(FieldToTrough.LossKgPerKg(FieldToTrough.Hours(leaf)), pieces.Sum);

    private static Estimate FromWeather(PluckedLeaf leaf, CanopyWater canopy)
    {
        Pieces pieces = new Pieces()
            .Add("rain", canopy.RainKgPerKg)
            .Add("dew", canopy.DewKgPerKg)
            .Add("unknown_rain", canopy.UnknownRainKgPerKg)
            .HoldWithin(0, MostKgPerKg);
        return Carried(leaf, pieces, canopy.StandardDeviation, EstimateOrigin.FromWeather);
    }

    private static Estimate Assumed(PluckedLeaf leaf) =>
        Carried(leaf, new Pieces().Add("assumed", AssumedKgPerKg), AssumedError, EstimateOrigin.Assumed);

    private static Estimate Carried(PluckedLeaf leaf, Pieces pieces, double error, EstimateOrigin origin)
    {
        double lost = Lost(leaf, pieces);
        double lossError = FieldToTrough.RelativeError * lost;
        return pieces.Add(FieldToTrough.Code, -lost)
            .HoldWithin(0, MostKgPerKg)
            .ToEstimate(Math.Sqrt(error * error + lossError * lossError), origin);
    }
}

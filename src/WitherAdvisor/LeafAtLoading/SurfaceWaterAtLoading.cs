using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>Water on the leaf at loading, kg/kg, from the best that is known: weighed, felt, from the weather, or assumed.</summary>
internal static class SurfaceWaterAtLoading
{
    /// <summary>No leaf holds more: above it water runs off (from memory).</summary>
    public const double MostKgPerKg = 0.35;

    /// <summary>Of a weighed sample, spun or blotted (from memory).</summary>
    public const double WeighedError = 0.02;

    /// <summary>Where more was weighed than leaf carries: a sample not spun, a tare forgotten, percent of another base (from memory).</summary>
    public const double BeyondLeafError = 0.08;

    /// <summary>Taken where neither hand nor weather tells: between dry leaf and damp.</summary>
    public const double AssumedKgPerKg = 0.05;
    public const double AssumedError = 0.07;

    public static Estimate Of(PluckedLeaf leaf, LeafFeatures features, WitherCoefficients coefficients)
    {
        if (leaf.MeasuredSurfaceWaterKgPerKg is double weighed && double.IsFinite(weighed))
        {
            return new(Math.Clamp(weighed, 0, MostKgPerKg), weighed > MostKgPerKg ? BeyondLeafError : WeighedError, EstimateOrigin.Measured, []);
        }

        if (leaf.SurfaceFeel is SurfaceFeel feel)
        {
            FeltSurfaceWater felt = FeltSurfaceWater.Of(feel);
            return features.CanopyIsKnown ? felt.With(ByWeather(features, coefficients)) : felt.Alone();
        }

        return ByWeather(features, coefficients);
    }

    /// <summary>By the weather alone; a usual value where too little of it is known.</summary>
    public static Estimate ByWeather(LeafFeatures features, WitherCoefficients coefficients)
    {
        if (!features.CanopyIsKnown)
        {
            return Carried(features, new Pieces().Add("assumed", AssumedKgPerKg), AssumedError, EstimateOrigin.Assumed);
        }

        CarriedWater water = CarriedWater.Of(features, coefficients);
        Pieces pieces = new Pieces()
            .Add("rain", water.RainKgPerKg)
            .Add("dew", water.DewKgPerKg)
            .Add("fog", water.FogKgPerKg)
            .Add("unknown_rain", water.UnknownRainKgPerKg)
            .HoldWithin(0, MostKgPerKg);
        return Carried(features, pieces, water.StandardDeviation, EstimateOrigin.FromWeather);
    }

    private static Estimate Carried(LeafFeatures features, Pieces pieces, double error, EstimateOrigin origin)
    {
        double lost = Math.Min(FieldToTrough.LossKgPerKg(features.HoursFromField), pieces.Sum);
        double lossError = FieldToTrough.RelativeError * lost;
        return pieces.Add(FieldToTrough.Code, -lost)
            .HoldWithin(0, MostKgPerKg)
            .ToEstimate(Math.Sqrt(error * error + lossError * lossError), origin);
    }
}

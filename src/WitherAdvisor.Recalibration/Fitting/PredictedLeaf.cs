using MathNet.Numerics.Distributions;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>The leaf at loading as weather and readings tell it.</summary>
/// <param name="Tissue">By the weather, wet basis.</param>
/// <param name="Surface">By the weather, kg/kg.</param>
/// <param name="TissueError">Standard deviation of this batch's leaf about it.</param>
/// <param name="SurfaceError">The same of the water on it.</param>
/// <param name="TissueShift">What a reading at loading moves the best value by.</param>
/// <param name="SurfaceShift">The same of the water on it.</param>
internal readonly record struct PredictedLeaf(
    double Tissue, double Surface, double TissueError, double SurfaceError, double TissueShift, double SurfaceShift)
{
    private const double DriestWetBasis = 0.5;
    private const double WettestWetBasis = 0.92;

    /// <summary>Where the bed starts from.</summary>
    public LeafState Best => new(
        Math.Clamp(Tissue + TissueShift, DriestWetBasis, WettestWetBasis), Math.Max(Surface + SurfaceShift, 0));

    public static PredictedLeaf Of(Occasion occasion, WitherCoefficients set, double groupMoisture)
    {
        (double tissue, double surface, double tissueError, double surfaceError) = ByWeather(occasion, set);
        tissue += groupMoisture;
        double tissueShift = 0;
        double surfaceShift = 0;
        for (int i = occasion.OfBed; i < occasion.Observations.Length; i++)
        {
            Observation read = occasion.Observations[i];
            if (read.Kind == ObservationKind.LoadingSurface)
            {
                surfaceShift = Shift(read, surface, surfaceError);
            }
            else
            {
                tissueShift = Shift(read, tissue, tissueError);
            }
        }

        return new(tissue, surface, tissueError, surfaceError, tissueShift, surfaceShift);
    }

    /// <summary>Moisture, surface water and the batch's own standard deviations of both, by weather and hand.</summary>
    public static (double Tissue, double Surface, double TissueError, double SurfaceError) ByWeather(
        Occasion occasion, WitherCoefficients set)
    {
        LeafFeatures features = occasion.Wither.Features;
        Estimate surface = Felt(occasion.Wither.AtLoading, features, features.SurfaceWaterKgPerKg(set));
        Estimate tissue = TissueMoistureAtLoading.ByWeather(features, surface, set);
        double share = occasion.OwnLeafShare;
        (double water, double error) = NeverBelowNone(surface.Value, share * surface.StandardDeviation);
        return (tissue.Value, water, share * tissue.StandardDeviation, error);
    }

    /// <summary>
    /// Mean and standard deviation of a normal variable of which what is below 0 counts as 0: leaf called dry carries on average a
    /// little, and a log of dry nights would else teach a thicker cuticle.
    /// </summary>
    private static (double Mean, double Deviation) NeverBelowNone(double mean, double deviation)
    {
        if (deviation <= 0 || mean > 6 * deviation)
        {
            return (mean, deviation);
        }

        double at = mean / deviation;
        double above = Normal.CDF(0, 1, at);
        double density = Normal.PDF(0, 1, at);
        double held = deviation * (at * above + density);
        double square = deviation * deviation * ((at * at + 1) * above + at * density);
        return (held, Math.Sqrt(Math.Max(square - held * held, 0)));
    }

    /// <summary>A hand errs the same way night after night, so what it tells is this batch's and teaches nothing of the site.</summary>
    private static Estimate Felt(LoadingReadings readings, LeafFeatures features, Estimate weather)
    {
        if (readings is not { Feel: { } feel, SurfaceWaterKgPerKg: null })
        {
            return weather;
        }

        FeltSurfaceWater felt = FeltSurfaceWater.Of(feel);
        return features.CanopyIsKnown ? felt.With(weather) : felt.Alone();
    }

    private static double Shift(Observation read, double value, double error) =>
        (read.Value - value) * error * error / (error * error + read.Error * read.Error);
}

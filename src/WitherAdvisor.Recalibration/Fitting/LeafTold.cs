using WitherAdvisor.Leaf;
using WitherAdvisor.Weather;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>The leaf at loading as weather and readings tell it.</summary>
/// <param name="Tissue">By the weather, wet basis.</param>
/// <param name="Surface">By the weather, kg/kg.</param>
/// <param name="TissueError">Standard deviation of this batch's leaf about it.</param>
/// <param name="SurfaceError">The same of the water on it.</param>
/// <param name="TissueShift">What a reading at loading moves the best value by.</param>
/// <param name="SurfaceShift">The same of the water on it.</param>
internal readonly record struct LeafTold(
    double Tissue, double Surface, double TissueError, double SurfaceError, double TissueShift, double SurfaceShift)
{
    private const double DriestWetBasis = 0.5;
    private const double WettestWetBasis = 0.92;

    /// <summary>Where the bed starts from.</summary>
    public LeafState Best => new(
        Math.Clamp(Tissue + TissueShift, DriestWetBasis, WettestWetBasis), Math.Max(Surface + SurfaceShift, 0));

    public static LeafTold Of(Occasion occasion, WitherCoefficients set, double groupMoisture)
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

    /// <summary>Moisture, surface water and the batch's own standard deviations of both, by the weather alone.</summary>
    public static (double Tissue, double Surface, double TissueError, double SurfaceError) ByWeather(
        Occasion occasion, WitherCoefficients set)
    {
        LeafFeatures features = occasion.Wither.Features;
        Estimate surface = features.SurfaceWaterKgPerKg(set);
        Estimate tissue = TissueMoistureAtLoading.ByWeather(features, surface, set);
        double share = occasion.OwnLeafShare;
        return (tissue.Value, surface.Value, share * tissue.StandardDeviation, share * surface.StandardDeviation);
    }

    private static double Shift(Observation read, double value, double error) =>
        (read.Value - value) * error * error / (error * error + read.Error * read.Error);
}

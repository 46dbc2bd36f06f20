using WitherAdvisor.Coefficients;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>A coefficient of the site that is fitted.</summary>
/// <param name="Coefficient">What it is.</param>
/// <param name="Coordinate">As the fit sees it.</param>
/// <param name="Spread">Its prior standard deviation, in the coordinate.</param>
/// <param name="IsLogarithmic">Whether the coordinate is near a logarithm.</param>
internal sealed record FittedCoefficient(Coefficient Coefficient, BoundedCoordinate Coordinate, double Spread, bool IsLogarithmic)
{
    public const int Cuticle = 0;
    public const int Film = 1;
    public const int SurfaceCapacity = 2;
    public const int TurnBlend = 3;
    public const int Airflow = 4;
    public const int Retention = 5;
    public const int DroughtMoisture = 6;
    public const int MoistureGain = 7;

    /// <summary>How many there are. The film's conductance is not the site's to learn but widens what is.</summary>
    public const int Count = 8;

    /// <summary>All, in the order of the constants, about a prior.</summary>
    public static FittedCoefficient[] About(WitherCoefficients prior)
    {
        CoefficientSpreads s = prior.Spreads;
        return
        [
            Of(nameof(WitherCoefficients.CuticularConductanceMPerS), s.CuticularConductance, true),
            Of(nameof(WitherCoefficients.BoundaryLayerConductanceMPerS), s.BoundaryLayerConductance, true),
            Of(nameof(WitherCoefficients.SurfaceCapacityKgPerKg), s.SurfaceCapacity, true),
            Of(nameof(WitherCoefficients.TurnBlend), s.TurnBlend, false),
            Of(nameof(WitherCoefficients.AirflowFactor), s.Airflow, true),
            Of(nameof(WitherCoefficients.SurfaceRetention), s.SurfaceRetention, true),
            Of(nameof(WitherCoefficients.DroughtMoistureWetBasis), s.DroughtMoistureWetBasis, false),
            Of(nameof(WitherCoefficients.DroughtToWetMoistureGain), s.DroughtToWetMoistureGain, false),
        ];

        FittedCoefficient Of(string name, double spread, bool logarithmic)
        {
            Coefficient known = CoefficientCatalogue.All.Single(one => one.Name == name);
            return new(known, new(known.Of(prior), known.Low, known.High, logarithmic, spread), spread, logarithmic);
        }
    }
}

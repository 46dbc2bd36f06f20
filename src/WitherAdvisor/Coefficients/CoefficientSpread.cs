using WitherAdvisor.Sites;

namespace WitherAdvisor.Coefficients;

/// <summary>How far the truth may lie from a set, in one of its numbers: see <see cref="CoefficientSpreads"/>.</summary>
/// <param name="Of">Name of the property of <see cref="WitherCoefficients"/> or of the trough that it spreads.</param>
/// <param name="IsOfLogarithm">Whether it is a share of the value; else in the value's own unit.</param>
/// <param name="In">Its value in a set: a standard deviation.</param>
public sealed record CoefficientSpread(string Of, bool IsOfLogarithm, Func<CoefficientSpreads, double> In)
{
    /// <summary>Every spread of a set.</summary>
    public static IReadOnlyList<CoefficientSpread> All { get; } =
    [
        new(nameof(WitherCoefficients.CuticularConductanceMPerS), true, spreads => spreads.CuticularConductance),
        new(nameof(WitherCoefficients.BoundaryLayerConductanceMPerS), true, spreads => spreads.BoundaryLayerConductance),
        new(nameof(WitherCoefficients.SurfaceCapacityKgPerKg), true, spreads => spreads.SurfaceCapacity),
        new(nameof(WitherCoefficients.SurfaceRetention), true, spreads => spreads.SurfaceRetention),
        new(nameof(WitherCoefficients.DroughtMoistureWetBasis), false, spreads => spreads.DroughtMoistureWetBasis),
        new(nameof(Trough.AirflowM3PerSM2), true, spreads => spreads.Airflow),
    ];
}

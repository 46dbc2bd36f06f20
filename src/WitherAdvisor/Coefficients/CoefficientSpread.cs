using WitherAdvisor.Sites;

namespace WitherAdvisor.Coefficients;

/// <summary>How far the truth may lie from a set, in one of its numbers: see <see cref="CoefficientSpreads"/>.</summary>
/// <param name="Of">Name of the property of <see cref="WitherCoefficients"/> or of the trough that it spreads.</param>
/// <param name="IsOfLogarithm">Whether it is a share of the value; else in the value's own unit.</param>
/// <param name="Meaning">What it stands for, in a sentence.</param>
/// <param name="In">Its value in a set: a standard deviation.</param>
public sealed record CoefficientSpread(string Of, bool IsOfLogarithm, string Meaning, Func<CoefficientSpreads, double> In)
{
    /// <summary>Every spread of a set.</summary>
    public static IReadOnlyList<CoefficientSpread> All { get; } =
    [
        new(nameof(WitherCoefficients.SkinConductanceMPerS), true, "Leaf of one loft and another; it stands for the leaf area too.", spreads => spreads.SkinConductance),
        new(nameof(WitherCoefficients.BoundaryConductanceMPerS), true, "How the leaf lies and how the air finds its way.", spreads => spreads.BoundaryConductance),
        new(nameof(WitherCoefficients.SurfaceCapacityKgPerKg), true, "How water stands on leaf of one kind and another.", spreads => spreads.SurfaceCapacity),
        new(nameof(WitherCoefficients.SurfaceRetention), true, "How hard leaf is shaken and carried; it works through the water on the leaf.", spreads => spreads.SurfaceRetention),
        new(nameof(WitherCoefficients.DroughtMoistureWetBasis), false, "One cultivar and another under the same drought; it works through the water in the leaf.", spreads => spreads.DroughtMoistureWetBasis),
        new(nameof(Trough.AirflowM3PerSM2), true, "What a fan is said to blow and what it blows.", spreads => spreads.Airflow),
    ];
}

using WitherAdvisor.Coefficients;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Coefficients;

/// <summary>A coefficient and the field of a request that sets it, in a unit that reads well.</summary>
internal sealed record CoefficientField(Coefficient Coefficient, FieldShape Field)
{
    // What is left of a product of decimals, so that 0.006 m/s shows as 6 mm/s.
    private const int DigitsThatCount = 12;

    /// <summary>All that a request may set; what holds by definition is not among them.</summary>
    public static IReadOnlyList<CoefficientField> All { get; } =
    [
        Pair(nameof(WitherCoefficients.SpecificLeafAreaM2PerKgDry), nameof(CoefficientsRequest.SpecificLeafAreaM2PerKg)),
        Pair(nameof(WitherCoefficients.BoundaryLayerConductanceMPerS), nameof(CoefficientsRequest.BoundaryLayerConductanceMmPerS)),
        Pair(nameof(WitherCoefficients.CuticularConductanceMPerS), nameof(CoefficientsRequest.CuticularConductanceMmPerS)),
        Pair(nameof(WitherCoefficients.EquilibriumMoistureDryBasis), nameof(CoefficientsRequest.EquilibriumMoistureKgPerKg)),
        Pair(nameof(WitherCoefficients.SurfaceCapacityKgPerKg), nameof(CoefficientsRequest.SurfaceCapacityKgPerKg)),
        Pair(nameof(WitherCoefficients.TurnBlend), nameof(CoefficientsRequest.TurnBlendPercent)),
        Pair(nameof(WitherCoefficients.SurfaceRetention), nameof(CoefficientsRequest.SurfaceRetentionPercent)),
        Pair(nameof(WitherCoefficients.CanopyCapacityMm), nameof(CoefficientsRequest.CanopyCapacityMm)),
        Pair(nameof(WitherCoefficients.DroughtMoistureWetBasis), nameof(CoefficientsRequest.DroughtMoistureWetBasisPercent)),
        Pair(nameof(WitherCoefficients.DroughtToWetMoistureGain), nameof(CoefficientsRequest.DroughtToWetMoistureGainPoints)),
        Pair(nameof(WitherCoefficients.AirflowFactor), nameof(CoefficientsRequest.AirflowFactorPercent)),
    ];

    public NumberShape Range => (NumberShape)Field.Shape;

    private double FieldPerDomain => Range.Unit switch
    {
        "%" or "percentage points" => 100,
        "mm/s" => 1000,
        _ => 1,
    };

    /// <summary>A value of the domain in the field's unit.</summary>
    public double Shown(double value) => Math.Round(value * FieldPerDomain, DigitsThatCount);

    /// <summary>A value in the field's unit in the domain's.</summary>
    public double ToDomain(double shown) => shown / FieldPerDomain;

    /// <summary>What a request sets it to, in the domain's unit; null where it leaves it.</summary>
    public double? Given(CoefficientsRequest input) => (double?)Field.Property.GetValue(input) / FieldPerDomain;

    /// <summary>Sets it in a request that is being made, held within its range.</summary>
    public void Give(CoefficientsRequest input, double value) =>
        Field.Property.SetValue(input, Math.Clamp(Shown(value), Range.Least, Range.Most));

    private static CoefficientField Pair(string coefficient, string field) => new(
        CoefficientCatalogue.All.Single(known => known.Name == coefficient),
        Shapes.Of(typeof(CoefficientsRequest).GetProperty(field)!));
}

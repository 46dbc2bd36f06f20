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
        Pair(nameof(WitherCoefficients.LeafAreaM2PerKgDry), nameof(CoefficientsInput.LeafAreaDryM2PerKg)),
        Pair(nameof(WitherCoefficients.BoundaryConductanceMPerS), nameof(CoefficientsInput.BoundaryConductanceMmPerS)),
        Pair(nameof(WitherCoefficients.SkinConductanceMPerS), nameof(CoefficientsInput.SkinConductanceMmPerS)),
        Pair(nameof(WitherCoefficients.EquilibriumMoistureDryBasis), nameof(CoefficientsInput.EquilibriumMoistureKgPerKg)),
        Pair(nameof(WitherCoefficients.SurfaceCapacityKgPerKg), nameof(CoefficientsInput.SurfaceCapacityKgPerKg)),
        Pair(nameof(WitherCoefficients.TurnBlend), nameof(CoefficientsInput.TurnBlendPercent)),
        Pair(nameof(WitherCoefficients.SurfaceRetention), nameof(CoefficientsInput.SurfaceRetentionPercent)),
        Pair(nameof(WitherCoefficients.CanopyCapacityMm), nameof(CoefficientsInput.CanopyCapacityMm)),
        Pair(nameof(WitherCoefficients.DroughtMoistureWetBasis), nameof(CoefficientsInput.DroughtMoistureWetBasisPercent)),
        Pair(nameof(WitherCoefficients.DroughtToWetMoistureGain), nameof(CoefficientsInput.DroughtToWetMoistureGainPoints)),
        Pair(nameof(WitherCoefficients.AirflowFactor), nameof(CoefficientsInput.AirflowFactorPercent)),
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
    public double? Given(CoefficientsInput input) => (double?)Field.Property.GetValue(input) / FieldPerDomain;

    /// <summary>Sets it in a request that is being made, held within its range.</summary>
    public void Give(CoefficientsInput input, double value) =>
        Field.Property.SetValue(input, Math.Clamp(Shown(value), Range.Least, Range.Most));

    private static CoefficientField Pair(string coefficient, string field) => new(
        CoefficientCatalogue.All.Single(known => known.Name == coefficient),
        Shapes.Of(typeof(CoefficientsInput).GetProperty(field)!));
}

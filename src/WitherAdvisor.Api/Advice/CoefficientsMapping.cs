using WitherAdvisor.Api.Input;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Advice;

/// <summary>Coefficients between the request and the domain.</summary>
internal static class CoefficientsMapping
{
    private const string UnnamedSet = "inline";
    private const double MillimetresPerMetre = 1000;

    private static readonly WitherCoefficients Defaults = new();

    public static WitherCoefficients ToDomain(CoefficientsInput? input) => input is null ? Defaults : new()
    {
        SetName = input.SetName ?? UnnamedSet,
        LeafAreaM2PerKgDry = input.LeafAreaDryM2PerKg ?? Defaults.LeafAreaM2PerKgDry,
        BoundaryConductanceMPerS =
            input.BoundaryConductanceMmPerS / MillimetresPerMetre ?? Defaults.BoundaryConductanceMPerS,
        SkinConductanceMPerS = input.SkinConductanceMmPerS / MillimetresPerMetre ?? Defaults.SkinConductanceMPerS,
        ReferenceMoistureDryBasis = input.ReferenceMoistureKgPerKg ?? Defaults.ReferenceMoistureDryBasis,
        EquilibriumMoistureDryBasis = input.EquilibriumMoistureKgPerKg ?? Defaults.EquilibriumMoistureDryBasis,
        SurfaceCapacityKgPerKg = input.SurfaceCapacityKgPerKg ?? Defaults.SurfaceCapacityKgPerKg,
        TurnBlend = Percent.ToFraction(input.TurnBlendPercent) ?? Defaults.TurnBlend,
        SurfaceRetention = Percent.ToFraction(input.SurfaceRetentionPercent) ?? Defaults.SurfaceRetention,
        CanopyCapacityMm = input.CanopyCapacityMm ?? Defaults.CanopyCapacityMm,
        DroughtMoistureWetBasis =
            Percent.ToFraction(input.DroughtMoistureWetBasisPercent) ?? Defaults.DroughtMoistureWetBasis,
        DroughtToWetMoistureGain =
            Percent.ToFraction(input.DroughtToWetMoistureGainPoints) ?? Defaults.DroughtToWetMoistureGain,
    };
}

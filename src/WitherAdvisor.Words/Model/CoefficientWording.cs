using WitherAdvisor.Coefficients;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Words.Model;

/// <summary>The coefficients of the model and their spreads, in words.</summary>
public static class CoefficientWording
{
    /// <summary>What it does, in a sentence.</summary>
    public static string Effect(string name) => name switch
    {
        nameof(WitherCoefficients.SpecificLeafAreaM2PerKgDry) => "Leaf area per dry weight: more of it dries faster and less evenly.",
        nameof(WitherCoefficients.BoundaryLayerConductanceMPerS) => "How freely vapour leaves the leaf's surface.",
        nameof(WitherCoefficients.CuticularConductanceMPerS) => "How freely water passes the leaf's cuticle: the pace of the main stage.",
        nameof(WitherCoefficients.ReferenceMoistureDryBasis) => "Moisture that g_0 is stated for; never fitted.",
        nameof(WitherCoefficients.EquilibriumMoistureDryBasis) => "Moisture at which leaf stops drying: slows the end of a hard wither.",
        nameof(WitherCoefficients.SurfaceCapacityKgPerKg) => "Surface water at which the whole leaf is wet and only that water dries.",
        nameof(WitherCoefficients.TurnBlend) => "How well a turn mixes the bed: sets the spread between layers and the turn interval.",
        nameof(WitherCoefficients.SurfaceRetention) => "Share of the water on the bushes that is still on plucked leaf.",
        nameof(WitherCoefficients.CanopyCapacityMm) => "Most rain and dew that leaf on the bush holds; sets how long it takes to dry off.",
        nameof(WitherCoefficients.DroughtMoistureWetBasis) => "Moisture of leaf at the end of a drought.",
        nameof(WitherCoefficients.DroughtToWetMoistureGain) => "How much moister well-watered leaf is.",
        nameof(WitherCoefficients.AirflowFactor) => "Real airflow over the stated airflow.",
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No words for this coefficient."),
    };

    /// <summary>What its spread stands for, in a sentence.</summary>
    public static string Spread(string of) => of switch
    {
        nameof(WitherCoefficients.CuticularConductanceMPerS) => "Differences in leaf from loft to loft; stands for the leaf area too.",
        nameof(WitherCoefficients.BoundaryLayerConductanceMPerS) => "How the leaf lies and how air passes through it.",
        nameof(WitherCoefficients.SurfaceCapacityKgPerKg) => "How water stands on different kinds of leaf.",
        nameof(WitherCoefficients.SurfaceRetention) => "How hard leaf is shaken and carried; acts through the water on the leaf.",
        nameof(WitherCoefficients.DroughtMoistureWetBasis) => "Differences between cultivars in the same drought; acts through the water in the leaf.",
        nameof(Trough.AirflowM3PerSM2) => "Difference between a fan's stated and real airflow.",
        _ => throw new ArgumentOutOfRangeException(nameof(of), of, "No words for this spread."),
    };
}

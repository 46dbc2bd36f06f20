using WitherAdvisor.Coefficients;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Words.Model;

/// <summary>The coefficients of the model and their spreads, in words.</summary>
public static class CoefficientWording
{
    /// <summary>What it does, in a sentence.</summary>
    public static string Effect(string name) => name switch
    {
        nameof(WitherCoefficients.SpecificLeafAreaM2PerKgDry) => "More area gives up water faster and evens the bed less.",
        nameof(WitherCoefficients.BoundaryLayerConductanceMPerS) => "How freely vapour leaves the surface of a leaf for the air that passes it.",
        nameof(WitherCoefficients.CuticularConductanceMPerS) => "How freely water passes the cuticle of a leaf: the pace of the main stage.",
        nameof(WitherCoefficients.ReferenceMoistureDryBasis) => "Fixes what g_0 means; never fitted.",
        nameof(WitherCoefficients.EquilibriumMoistureDryBasis) => "Moisture at which leaf gives up no more: slows the end of a hard wither.",
        nameof(WitherCoefficients.SurfaceCapacityKgPerKg) => "Surface water at which the whole leaf is wet and its cuticle gives up nothing.",
        nameof(WitherCoefficients.TurnBlend) => "How well a turn mixes the bed: the spread between layers and so the turn interval.",
        nameof(WitherCoefficients.SurfaceRetention) => "Share of the canopy's water still on leaf that was plucked, shaken and carried.",
        nameof(WitherCoefficients.CanopyCapacityMm) => "Most rain and dew that leaf of the canopy holds; how long it takes to dry off.",
        nameof(WitherCoefficients.DroughtMoistureWetBasis) => "Moisture of leaf at the end of a drought.",
        nameof(WitherCoefficients.DroughtToWetMoistureGain) => "How much wetter leaf is when the soil lacks nothing.",
        nameof(WitherCoefficients.AirflowFactor) => "True airflow over the stated: how much air takes up the leaf's water.",
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No words for this coefficient."),
    };

    /// <summary>What its spread stands for, in a sentence.</summary>
    public static string Spread(string of) => of switch
    {
        nameof(WitherCoefficients.CuticularConductanceMPerS) => "Leaf of one loft and another; it stands for the leaf area too.",
        nameof(WitherCoefficients.BoundaryLayerConductanceMPerS) => "How the leaf lies and how the air finds its way.",
        nameof(WitherCoefficients.SurfaceCapacityKgPerKg) => "How water stands on leaf of one kind and another.",
        nameof(WitherCoefficients.SurfaceRetention) => "How hard leaf is shaken and carried; it works through the water on the leaf.",
        nameof(WitherCoefficients.DroughtMoistureWetBasis) => "One cultivar and another under the same drought; it works through the water in the leaf.",
        nameof(Trough.AirflowM3PerSM2) => "What a fan is said to blow and what it blows.",
        _ => throw new ArgumentOutOfRangeException(nameof(of), of, "No words for this spread."),
    };
}

using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Coefficients;

namespace WitherAdvisor.Api.Coefficients;

/// <summary>The coefficients of leaf, bed and weather; what is left out is as the set defaults-1 has it.</summary>
public sealed record CoefficientsRequest
{
    /// <summary>The set's name, which the answer repeats; "inline" when left out.</summary>
    /// <example>what-if-1</example>
    [Text(SiteSet.LongestName)]
    public string? SetName { get; init; }

    /// <summary>One-sided leaf area per kg of dry matter; 20 when left out.</summary>
    /// <example>20</example>
    [Measured(15, 25)]
    public double? SpecificLeafAreaM2PerKg { get; init; }

    /// <summary>Conductance of the air film at the leaf; 6 when left out.</summary>
    /// <example>6</example>
    [Measured(3, 15)]
    public double? BoundaryLayerConductanceMmPerS { get; init; }

    /// <summary>Cuticular conductance at the reference moisture; 1 when left out.</summary>
    /// <example>1</example>
    [Measured(0.2, 2)]
    public double? CuticularConductanceMmPerS { get; init; }

    /// <summary>Moisture at which leaf gives up no more, water per kg of dry matter; 0.15 when left out.</summary>
    /// <example>0.15</example>
    [Measured(0.05, 0.35)]
    public double? EquilibriumMoistureKgPerKg { get; init; }

    /// <summary>Surface water at which the whole leaf is wet, per kg of leaf without it; 0.2 when left out.</summary>
    /// <example>0.2</example>
    [Measured(0.1, 0.4)]
    public double? SurfaceCapacityKgPerKg { get; init; }

    /// <summary>How far a turn mixes the bed toward its mean after reversing it; 50 when left out.</summary>
    /// <example>50</example>
    [Measured(0, 100)]
    public double? TurnBlendPercent { get; init; }

    /// <summary>Share of the canopy's water still on leaf that was plucked, shaken and carried; 25 when left out.</summary>
    /// <example>25</example>
    [Measured(5, 60)]
    public double? SurfaceRetentionPercent { get; init; }

    /// <summary>Most water held on leaf, per unit of one-sided leaf area; 0.2 when left out.</summary>
    /// <example>0.2</example>
    [Measured(0.05, 0.6)]
    public double? CanopyCapacityMm { get; init; }

    /// <summary>Leaf moisture in the drought at which the FAO-56 stress coefficient is 0.3; 74 when left out.</summary>
    /// <example>74</example>
    [Measured(70, 78)]
    public double? DroughtMoistureWetBasisPercent { get; init; }

    /// <summary>What leaf moisture gains from that drought to no stress at all; 6 when left out.</summary>
    /// <example>6</example>
    [Measured(2, 10)]
    public double? DroughtToWetMoistureGainPoints { get; init; }

    /// <summary>True airflow of the trough over what it is said to have; 100 when left out.</summary>
    /// <example>100</example>
    [Measured(50, 150)]
    public double? AirflowFactorPercent { get; init; }

    /// <summary>How far the truth may lie from them.</summary>
    public SpreadsRequest? Spreads { get; init; }
}

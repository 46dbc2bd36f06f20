using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Coefficients;

/// <summary>
/// How far the truth may lie from a set, as standard deviations; a "fraction" is of the value (of its logarithm), the
/// others are in the value's own unit. What is left out is as the set defaults-1 has it. A simulation does not use them.
/// </summary>
public sealed record SpreadsRequest
{
    /// <summary>Of the cuticular conductance; it stands for the leaf area too. 0.15 when left out.</summary>
    /// <example>0.15</example>
    [Measured(0, 0.6)]
    public double? CuticularConductanceFraction { get; init; }

    /// <summary>Of the air film's conductance; 0.15 when left out.</summary>
    /// <example>0.15</example>
    [Measured(0, 0.6)]
    public double? BoundaryLayerConductanceFraction { get; init; }

    /// <summary>Of the surface water at which the whole leaf is wet; 0.3 when left out.</summary>
    /// <example>0.3</example>
    [Measured(0, 0.6)]
    public double? SurfaceCapacityFraction { get; init; }

    /// <summary>Of the share of the canopy's water that stays on plucked leaf; 0.3 when left out.</summary>
    /// <example>0.3</example>
    [Measured(0, 0.6)]
    public double? SurfaceRetentionFraction { get; init; }

    /// <summary>Of the moisture that a drought leaves; 1 when left out.</summary>
    /// <example>1</example>
    [Measured(0, 4)]
    public double? DroughtMoisturePoints { get; init; }

    /// <summary>Of the moisture gained from drought to no stress; 1 when left out.</summary>
    /// <example>1</example>
    [Measured(0, 4)]
    public double? DroughtToWetMoistureGainPoints { get; init; }

    /// <summary>Of how far a turn mixes the bed; 15 when left out.</summary>
    /// <example>15</example>
    [Measured(0, 50)]
    public double? TurnBlendPoints { get; init; }

    /// <summary>Of the airflow that a trough is said to have; 0.08 when left out.</summary>
    /// <example>0.08</example>
    [Measured(0, 0.5)]
    public double? AirflowFraction { get; init; }
}

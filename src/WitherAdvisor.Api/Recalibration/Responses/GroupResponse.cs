using WitherAdvisor.Fields.Json;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>What was learned of leaf of one cultivar and standard.</summary>
[Computed]
public sealed record GroupResponse
{
    /// <summary>Cultivar; null where nobody said.</summary>
    /// <example>Clone A</example>
    public required string? Cultivar { get; init; }

    /// <summary>Standard of plucking; null where nobody said.</summary>
    /// <example>fine</example>
    public required LeafStandard? LeafStandard { get; init; }

    /// <summary>How many were of it.</summary>
    /// <example>24</example>
    public required int Outcomes { get; init; }

    /// <summary>Its cuticular conductance over that of the site's set.</summary>
    /// <example>1.07</example>
    public required double CuticularConductanceFraction { get; init; }

    /// <summary>Lower end of its 90 % interval.</summary>
    /// <example>1.01</example>
    public required double CuticularConductanceLowFraction { get; init; }

    /// <summary>Upper end.</summary>
    /// <example>1.13</example>
    public required double CuticularConductanceHighFraction { get; init; }

    /// <summary>Its moisture at loading less that by the site's set.</summary>
    /// <example>0.3</example>
    public required double MoistureShiftPoints { get; init; }

    /// <summary>Lower end of its 90 % interval.</summary>
    /// <example>-0.2</example>
    public required double MoistureShiftLowPoints { get; init; }

    /// <summary>Upper end.</summary>
    /// <example>0.8</example>
    public required double MoistureShiftHighPoints { get; init; }
}

using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>The bed at one time; moistures are wet basis.</summary>
[Computed]
public sealed record CurvePointResponse
{
    /// <summary>From loading.</summary>
    /// <example>2</example>
    public required double Hour { get; init; }

    /// <summary>When.</summary>
    /// <example>2026-03-01T15:00:00+05:30</example>
    public required DateTimeOffset At { get; init; }

    /// <summary>Of the leaf then at the mesh, without its surface water.</summary>
    /// <example>74.1</example>
    public required double BottomMoistureWetBasisPercent { get; init; }

    /// <summary>The same in the middle.</summary>
    /// <example>75.2</example>
    public required double MiddleMoistureWetBasisPercent { get; init; }

    /// <summary>The same on top.</summary>
    /// <example>76</example>
    public required double TopMoistureWetBasisPercent { get; init; }

    /// <summary>Of the whole bed, surface water counted in.</summary>
    /// <example>75.9</example>
    public required double MeanMoistureWetBasisPercent { get; init; }

    /// <summary>Mean water on the leaf, per kg of leaf as loaded without it.</summary>
    /// <example>0.031</example>
    public required double SurfaceWaterKgPerKg { get; init; }

    /// <summary>All leaf on the trough.</summary>
    /// <example>1032.5</example>
    public required double LeafWeightKg { get; init; }

    /// <summary>Air leaving the top of the bed.</summary>
    /// <example>20.4</example>
    public required double ExhaustDryBulbC { get; init; }

    /// <summary>Temperature of the leaf then at the mesh: between the wet and the dry bulb of its air.</summary>
    /// <example>21.3</example>
    public required double? BottomLeafC { get; init; }

    /// <summary>The same on top.</summary>
    /// <example>19.8</example>
    public required double? TopLeafC { get; init; }
}

using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Simulations;

/// <summary>The leaf as it comes onto the trough.</summary>
public sealed record SimulatedLeafRequest
{
    /// <summary>Moisture of the leaf without its surface water.</summary>
    /// <example>78</example>
    [Measured(60, 90)]
    public required double TissueMoistureWetBasisPercent { get; init; }

    /// <summary>Water on the leaf, per kg of leaf without it.</summary>
    /// <example>0.2</example>
    [Measured(0, 0.6)]
    public required double SurfaceWaterKgPerKg { get; init; }
}

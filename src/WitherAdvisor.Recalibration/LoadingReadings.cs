using WitherAdvisor.Leaf;

namespace WitherAdvisor.Recalibration;

/// <summary>What was measured or felt of leaf at loading. Null where nobody did.</summary>
/// <param name="SurfaceWaterKgPerKg">Weighed by spinning or blotting, kg per kg of leaf without it.</param>
/// <param name="MoistureWetBasis">Of an oven-dried sample without surface water, wet basis.</param>
/// <param name="Feel">Water on the leaf by hand.</param>
public sealed record LoadingReadings(
    double? SurfaceWaterKgPerKg = null, double? MoistureWetBasis = null, SurfaceFeel? Feel = null)
{
    /// <summary>Nothing measured, nothing felt.</summary>
    public static LoadingReadings None { get; } = new();
}

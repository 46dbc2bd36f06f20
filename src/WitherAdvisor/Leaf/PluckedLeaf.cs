
namespace WitherAdvisor.Leaf;

/// <summary>What is known of the leaf itself, beside the weather.</summary>
public sealed record PluckedLeaf(
    DateTimeOffset PluckedFrom,
    DateTimeOffset PluckedTo,
    DateTimeOffset LoadedAt,
    LeafStandard? Standard = null,
    double? MeasuredSurfaceWaterKgPerKg = null,
    SurfaceFeel? SurfaceFeel = null,
    double? MeasuredMoistureWetBasis = null);


namespace WitherAdvisor.Leaf;

/// <summary>A batch of leaf on a trough.</summary>
/// <param name="Label">What keeps it apart from other lots.</param>
/// <param name="PluckedFrom">When plucking of it began.</param>
/// <param name="PluckedTo">When plucking of it ended.</param>
/// <param name="LoadedAt">When it lay on the trough with the air on; hour 0 of the plan.</param>
/// <param name="GreenWeightKg">Weight as it came in, with its surface water, kg.</param>
/// <param name="MeasuredSurfaceWaterKgPerKg">By weighing a sample before and after blotting or spinning, kg per kg of leaf without its surface water; null where nobody did.</param>
/// <param name="SurfaceFeel">By hand; null where nobody said.</param>
/// <param name="MeasuredMoistureWetBasis">Of leaf without its surface water, oven-dry (ISO 1573 adapted from made tea to leaf); null where nobody did.</param>
/// <param name="ReadyBy">When rolling wants it; null where any time will do.</param>
public sealed record Batch(
    LeafLabel Label,
    DateTimeOffset PluckedFrom,
    DateTimeOffset PluckedTo,
    DateTimeOffset LoadedAt,
    double GreenWeightKg,
    double? MeasuredSurfaceWaterKgPerKg = null,
    SurfaceFeel? SurfaceFeel = null,
    double? MeasuredMoistureWetBasis = null,
    DateTimeOffset? ReadyBy = null);

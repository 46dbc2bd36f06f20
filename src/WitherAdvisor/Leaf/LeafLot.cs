namespace WitherAdvisor.Leaf;

/// <summary>A part of a batch that comes onto the trough by itself, laid on what lies there.</summary>
/// <param name="LoadedAt">When it lay on the trough, or is expected to.</param>
/// <param name="GreenWeightKg">Weight as it came in, with its surface water, kg.</param>
/// <param name="Label">What keeps it apart from other lots; null where it is that of the first lot that tells it.</param>
/// <param name="PluckedFrom">When plucking of it began; null where nobody said: then as long before loading as that of the first lot that tells it.</param>
/// <param name="PluckedTo">When plucking of it ended; null likewise.</param>
/// <param name="MeasuredSurfaceWaterKgPerKg">By weighing a sample, kg per kg of leaf without its surface water; null where nobody did.</param>
/// <param name="SurfaceFeel">By hand; null where nobody said.</param>
/// <param name="MeasuredMoistureWetBasis">Of leaf without its surface water, oven-dry; null where nobody did.</param>
/// <param name="IsExpected">Whether it has not come yet.</param>
public sealed record LeafLot(
    DateTimeOffset LoadedAt,
    double GreenWeightKg,
    LeafLabel? Label = null,
    DateTimeOffset? PluckedFrom = null,
    DateTimeOffset? PluckedTo = null,
    double? MeasuredSurfaceWaterKgPerKg = null,
    SurfaceFeel? SurfaceFeel = null,
    double? MeasuredMoistureWetBasis = null,
    bool IsExpected = false);

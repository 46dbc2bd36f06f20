using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Recalibration;

/// <summary>What was found of a wither. Null where nobody looked.</summary>
/// <param name="WitheredWeightKg">All leaf of the trough at unloading, kg.</param>
/// <param name="MoistureWetBasis">Of an oven-dried sample of all of it at unloading, wet basis.</param>
/// <param name="ByHeight">Of samples by height at unloading.</param>
/// <param name="Weighings">Of a sample left in the bed, on the way.</param>
public sealed record WitherFindings(
    double? WitheredWeightKg = null,
    double? MoistureWetBasis = null,
    LayerMoistures? ByHeight = null,
    IReadOnlyList<SampleWeighing>? Weighings = null);

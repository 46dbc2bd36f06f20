using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Spells;

namespace WitherAdvisor.LeafAtLoading;

/// <summary>What the weather did to the leaf, or what was measured instead.</summary>
/// <param name="SurfaceWaterKgPerKg">At loading, kg per kg of leaf without its surface water.</param>
/// <param name="TissueMoistureWetBasis">At loading, of leaf without its surface water, wet basis.</param>
/// <param name="Spell">The spell at plucking.</param>
/// <param name="Missing">What was not known and widened the standard deviations.</param>
public sealed record LeafEstimate(
    Estimate SurfaceWaterKgPerKg,
    Estimate TissueMoistureWetBasis,
    Spell Spell,
    IReadOnlyList<Assumption> Missing);

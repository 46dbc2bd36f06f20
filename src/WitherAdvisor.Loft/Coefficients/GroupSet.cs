using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Loft.Coefficients;

/// <summary>Coefficients for leaf of one cultivar and standard.</summary>
/// <param name="Cultivar">Null for leaf of which nobody said.</param>
/// <param name="Standard">Null for leaf of which nobody said.</param>
/// <param name="Coefficients">With the name that advice for such leaf bears.</param>
public sealed record GroupSet(string? Cultivar, LeafStandard? Standard, WitherCoefficients Coefficients);

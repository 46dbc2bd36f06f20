using WitherAdvisor.Leaf;

namespace WitherAdvisor.Bed;

/// <summary>What leaf of several lots comes to as loaded, by weight.</summary>
internal static class MixedLeaf
{
    /// <summary>The mean of leaf with a dry mass and the lots laid on it; the leaf itself where none are.</summary>
    public static LeafState Of(LeafState leaf, double dryMassKgPerM2, IEnumerable<LaidLot> later) =>
        later.Aggregate((Leaf: leaf, DryMass: dryMassKgPerM2), (mixed, lot) => (
            With(mixed.Leaf, mixed.DryMass, lot), mixed.DryMass + lot.DryMassKgPerM2)).Leaf;

    private static LeafState With(LeafState lying, double dryMass, LaidLot lot)
    {
        double dry = dryMass + lot.DryMassKgPerM2;
        double lyingLeaf = dryMass / (1 - lying.TissueMoistureWetBasis);
        double lotLeaf = lot.DryMassKgPerM2 / (1 - lot.Leaf.TissueMoistureWetBasis);
        double leaf = lyingLeaf + lotLeaf;
        return new(1 - dry / leaf, (lyingLeaf * lying.SurfaceWaterKgPerKg + lotLeaf * lot.Leaf.SurfaceWaterKgPerKg) / leaf);
    }
}

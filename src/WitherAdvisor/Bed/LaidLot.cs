using WitherAdvisor.Leaf;

namespace WitherAdvisor.Bed;

/// <summary>Leaf that is laid on top of a bed while the air blows.</summary>
/// <param name="Hour">When, hours from the loading of the first leaf.</param>
/// <param name="Leaf">As it is laid.</param>
/// <param name="LoadKgPerM2">Leaf with its surface water, per area of mesh.</param>
public sealed record LaidLot(double Hour, LeafState Leaf, double LoadKgPerM2)
{
    /// <summary>Dry matter per area, kg/m².</summary>
    public double DryMassKgPerM2 => Leaf.DryMatterKg(LoadKgPerM2);
}

namespace WitherAdvisor.Leaf;

/// <summary>Leaf as it comes onto the trough.</summary>
/// <param name="TissueMoistureWetBasis">Water in the leaf, kg per kg of leaf without its surface water.</param>
/// <param name="SurfaceWaterKgPerKg">Water on the leaf, kg per kg of leaf without its surface water.</param>
public readonly record struct LeafState(double TissueMoistureWetBasis, double SurfaceWaterKgPerKg)
{
    /// <summary>Dry matter, kg, in a weight of leaf (kg) that was weighed with its surface water on.</summary>
    public double DryMatterKg(double greenWeightKg) =>
        greenWeightKg / (1 + SurfaceWaterKgPerKg) * (1 - TissueMoistureWetBasis);
}

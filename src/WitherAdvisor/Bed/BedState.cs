using WitherAdvisor.Leaf;

namespace WitherAdvisor.Bed;

/// <summary>A bed as it stands at an hour of its wither.</summary>
/// <param name="Loaded">The leaf as it was loaded, the mean where it came in lots: what dry matter and surface capacity are reckoned from.</param>
/// <param name="Hour">Hours since loading.</param>
/// <param name="TissueDryBasis">Water in the leaf by layers of equal dry matter from the mesh up, kg per kg dry matter; at least one.</param>
/// <param name="SurfaceDryBasis">Water on the leaf by the same layers, kg per kg dry matter.</param>
public sealed record BedState(
    LeafState Loaded, double Hour, IReadOnlyList<double> TissueDryBasis, IReadOnlyList<double> SurfaceDryBasis)
{
    /// <summary>Water in the leaf as it was loaded, by the same layers, kg per kg dry matter; null where all was loaded alike.</summary>
    public IReadOnlyList<double>? FreshDryBasis { get; init; }

    /// <summary>Leaf just loaded, the same at every height.</summary>
    public static BedState AtLoading(LeafState leaf) => new(
        leaf, 0, [Moisture.DryBasis(leaf.TissueMoistureWetBasis)],
        [leaf.SurfaceWaterKgPerKg / (1 - leaf.TissueMoistureWetBasis)]);

    /// <summary>
    /// The same bed had other leaf been loaded. Leaf dries about as fast as it is wet, so each layer keeps the share of its
    /// water that it has kept.
    /// </summary>
    public BedState HadItBeen(LeafState leaf)
    {
        BedState before = AtLoading(Loaded);
        BedState other = AtLoading(leaf);
        return Hour == 0
            ? other
            : new(
                leaf, Hour,
                Scaled(TissueDryBasis, other.TissueDryBasis[0], before.TissueDryBasis[0]),
                Scaled(SurfaceDryBasis, other.SurfaceDryBasis[0], before.SurfaceDryBasis[0]))
            {
                FreshDryBasis = FreshDryBasis is null ? null : Scaled(FreshDryBasis, other.TissueDryBasis[0], before.TissueDryBasis[0]),
            };
    }

    /// <summary>Fills layers of a bed that may be cut otherwise; no water is lost or gained.</summary>
    internal static void CutInto(double[] layers, IReadOnlyList<double> values)
    {
        for (int i = 0; i < layers.Length; i++)
        {
            layers[i] = values.Count == 1 ? values[0]
                : values.Count == layers.Length ? values[i]
                : Mean(values, (double)i * values.Count / layers.Length, (double)(i + 1) * values.Count / layers.Length);
        }
    }

    /// <summary>Mean over a stretch of height, in layers from the mesh.</summary>
    private static double Mean(IReadOnlyList<double> values, double from, double to)
    {
        double sum = 0;
        for (int layer = (int)from; layer < values.Count && layer < to; layer++)
        {
            sum += values[layer] * (Math.Min(layer + 1, to) - Math.Max(layer, from));
        }

        return sum / (to - from);
    }

    private static IReadOnlyList<double> Scaled(IReadOnlyList<double> values, double to, double from) =>
        from > 0 ? [.. values.Select(value => value * to / from)] : values;
}

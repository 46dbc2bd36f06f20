using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>What a bed's answer is differentiated by: places in an array of numbers.</summary>
internal static class BedInput
{
    /// <summary>Moisture of the leaf at loading, wet basis.</summary>
    public const int Tissue = 0;

    /// <summary>Water on it, kg/kg.</summary>
    public const int Surface = 1;

    /// <summary>Dry bulb under the mesh over what was read, K.</summary>
    public const int AirK = 2;

    /// <summary>Logarithm of g_0.</summary>
    public const int Cuticle = 3;

    /// <summary>Logarithm of g_b.</summary>
    public const int Film = 4;

    /// <summary>Logarithm of S_c.</summary>
    public const int SurfaceCapacity = 5;

    /// <summary>β.</summary>
    public const int TurnBlend = 6;

    /// <summary>Logarithm of the airflow over the stated.</summary>
    public const int Airflow = 7;

    public const int Count = 8;

    /// <summary>The first of them that are a batch's own and no coefficient.</summary>
    public const int OwnCount = 3;

    /// <summary>
    /// Steps of the derivatives: far above rounding, far below what the bed bends in. Below the water on the leaf S_c does nothing,
    /// above it something, so its step is a long one.
    /// </summary>
    public static ReadOnlySpan<double> Steps => [1e-3, 2e-3, 0.05, 5e-3, 5e-3, 0.1, 1e-2, 5e-3];

    /// <summary>Fills them in for leaf and coefficients; the logarithm by which its cuticle parts from those.</summary>
    public static void Fill(Span<double> inputs, LeafState leaf, WitherCoefficients set, double cuticularOffset)
    {
        inputs[Tissue] = leaf.TissueMoistureWetBasis;
        inputs[Surface] = leaf.SurfaceWaterKgPerKg;
        inputs[AirK] = 0;
        inputs[Cuticle] = Math.Log(set.CuticularConductanceMPerS) + cuticularOffset;
        inputs[Film] = Math.Log(set.BoundaryLayerConductanceMPerS);
        inputs[SurfaceCapacity] = Math.Log(set.SurfaceCapacityKgPerKg);
        inputs[TurnBlend] = set.TurnBlend;
        inputs[Airflow] = Math.Log(set.AirflowFactor);
    }
}

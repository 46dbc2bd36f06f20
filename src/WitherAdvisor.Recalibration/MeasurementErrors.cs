using WitherAdvisor.LeafAtLoading;

namespace WitherAdvisor.Recalibration;

/// <summary>Standard deviations of what people measure. All from memory; the residuals scale them together.</summary>
public sealed record MeasurementErrors
{
    /// <summary>Of withered over green weight, relative: each weighing is within about 1 %.</summary>
    public double OutturnRelative { get; init; } = 0.014;

    /// <summary>Of an oven-dried sample at unloading, wet basis, sampling counted in.</summary>
    public double OvenMoistureWetBasis { get; init; } = 0.006;

    /// <summary>Of a sample at one height of the bed, wet basis.</summary>
    public double HeightMoistureWetBasis { get; init; } = 0.008;

    /// <summary>Of a sample's share of its starting weight.</summary>
    public double SampleShare { get; init; } = 0.012;

    /// <summary>Of surface water weighed at loading, kg/kg.</summary>
    public double SurfaceWaterKgPerKg { get; init; } = SurfaceWaterAtLoading.WeighedError;

    /// <summary>Of an oven-dried sample at loading, wet basis.</summary>
    public double LoadingMoistureWetBasis { get; init; } = TissueMoistureAtLoading.OvenError;

    /// <summary>Of the dry bulb under the mesh, mean of a wither, where it was read, K.</summary>
    public double MeasuredAirK { get; init; } = 0.3;

    /// <summary>The same where the air is only known as it was set, K.</summary>
    public double SetAirK { get; init; } = 0.7;

    /// <summary>How much of the leaf's own standard deviation counts: what sets it apart from what its weather says.</summary>
    public double LeafShare { get; init; } = 1;
}

using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Plans.Search;

/// <summary>All that a plan is chosen for. Hours count from loading.</summary>
/// <param name="Leaf">The leaf at loading.</param>
/// <param name="LoadKgPerM2">Leaf with its surface water, per area of mesh.</param>
/// <param name="ShortestHours">Earliest stop that the chemical wither allows.</param>
/// <param name="LongestHours">Latest stop that it allows.</param>
/// <param name="ReadyByHour">When rolling wants the leaf; null where any time will do.</param>
internal sealed record PlanProblem(
    LeafState Leaf,
    double LoadKgPerM2,
    Trough Trough,
    WitherStyle Style,
    double HotAirC,
    Night Night,
    WitherCoefficients Coefficients,
    double ShortestHours,
    double LongestHours,
    double? ReadyByHour)
{
    /// <summary>M: dry matter per area, kg/m².</summary>
    public double DryMassKgPerM2 => Leaf.DryMatterKg(LoadKgPerM2);

    /// <summary>Water in and on the leaf at which it is ready, kg per kg dry matter.</summary>
    public double TargetDryBasis => Moisture.DryBasis(Style.TargetMoistureWetBasis);

    public BedSetup Bed(SaturationTable saturation, BedResolution resolution, double fanShare) => new(
        Leaf, DryMassKgPerM2, Trough.AirflowM3PerSM2 * fanShare, Night.PressurePa, saturation, Coefficients,
        resolution.Layers, resolution.LongestStepS);
}

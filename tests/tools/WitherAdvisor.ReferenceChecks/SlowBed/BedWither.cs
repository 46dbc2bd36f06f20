using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.ReferenceChecks.SlowBed;

/// <summary>One wither of a bed under constant air, as both solvers are given it.</summary>
/// <param name="PressurePa">Pa.</param>
/// <param name="PlenumC">Dry bulb under the mesh, °C.</param>
/// <param name="HumidityRatio">Under the mesh, kg per kg of dry air.</param>
/// <param name="AirflowM3PerSM2">Volume at the plenum state, m³/s·m².</param>
/// <param name="DryMassKgPerM2">Dry matter, kg/m².</param>
/// <param name="Leaf">At loading.</param>
/// <param name="TargetWetBasis">Moisture to be reached, surface water counted in.</param>
/// <param name="TurnEveryHours">Whole hours; infinite for no turn.</param>
/// <param name="Coefficients">Of leaf and bed.</param>
public sealed record BedWither(
    double PressurePa,
    double PlenumC,
    double HumidityRatio,
    double AirflowM3PerSM2,
    double DryMassKgPerM2,
    LeafState Leaf,
    double TargetWetBasis,
    double TurnEveryHours,
    WitherCoefficients Coefficients)
{
    /// <summary>Nobody withers longer; what has not dried by then is compared by its moisture.</summary>
    public const double HorizonHours = 30;

    public double TargetDryBasis => TargetWetBasis / (1 - TargetWetBasis);
}

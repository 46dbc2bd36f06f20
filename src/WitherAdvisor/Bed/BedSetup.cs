using WitherAdvisor.Air;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Bed;

/// <summary>One square metre of a loaded trough.</summary>
/// <param name="Leaf">The leaf at loading.</param>
/// <param name="DryMassKgPerM2">M: dry matter per area, kg/m².</param>
/// <param name="AirflowM3PerSM2">Volume of plenum air per area, m³/s·m².</param>
/// <param name="PressurePa">Of the air, Pa.</param>
/// <param name="Saturation">Saturation at that pressure.</param>
/// <param name="Coefficients">Of leaf and bed.</param>
/// <param name="Layers">Layers the bed is cut into.</param>
/// <param name="LongestStepS">Longest step in time, s.</param>
public sealed record BedSetup(
    LeafState Leaf,
    double DryMassKgPerM2,
    double AirflowM3PerSM2,
    double PressurePa,
    SaturationTable Saturation,
    WitherCoefficients Coefficients,
    int Layers,
    double LongestStepS);

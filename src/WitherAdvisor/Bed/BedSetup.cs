using WitherAdvisor.Air;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Bed;

/// <summary>One square metre of a loaded trough.</summary>
/// <param name="Start">The bed where it begins.</param>
/// <param name="DryMassKgPerM2">M: dry matter per area where it begins, kg/m².</param>
/// <param name="AirflowM3PerSM2">Volume of plenum air per area, m³/s·m².</param>
/// <param name="PressurePa">Of the air, Pa.</param>
/// <param name="Saturation">Saturation at that pressure.</param>
/// <param name="Coefficients">Of leaf and bed.</param>
/// <param name="Layers">Layers the bed is cut into.</param>
/// <param name="LongestStepS">Longest step in time, s.</param>
public sealed record BedSetup(
    BedState Start,
    double DryMassKgPerM2,
    double AirflowM3PerSM2,
    double PressurePa,
    SaturationTable Saturation,
    WitherCoefficients Coefficients,
    int Layers,
    double LongestStepS)
{
    /// <summary>From loading on.</summary>
    public BedSetup(
        LeafState leaf, double dryMassKgPerM2, double airflowM3PerSM2, double pressurePa, SaturationTable saturation,
        WitherCoefficients coefficients, int layers, double longestStepS)
        : this(BedState.AtLoading(leaf), dryMassKgPerM2, airflowM3PerSM2, pressurePa, saturation, coefficients, layers, longestStepS)
    {
    }

    /// <summary>Lots still to be laid on, in order.</summary>
    public IReadOnlyList<LaidLot> Later { get; init; } = [];

    /// <summary>The leaf as it was loaded.</summary>
    public LeafState Leaf => Start.Loaded;
}

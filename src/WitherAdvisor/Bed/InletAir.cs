using WitherAdvisor.Air;

namespace WitherAdvisor.Bed;

/// <summary>Air under the mesh.</summary>
/// <param name="DryBulbC">°C.</param>
/// <param name="HumidityRatio">kg of vapour per kg of dry air.</param>
/// <param name="FlowShare">Share of the trough's full airflow while the fan runs.</param>
/// <param name="RunShare">Share of the time that the fan runs; while it stands nothing dries.</param>
public readonly record struct InletAir(double DryBulbC, double HumidityRatio, double FlowShare = 1, double RunShare = 1)
{
    /// <summary>From dry bulb (°C), hygrometric difference (K) and pressure (Pa): what two thermometers under the mesh tell.</summary>
    public static InletAir FromDifference(double dryBulbC, double differenceK, double pressurePa) =>
        new(dryBulbC, AirState.FromWetBulb(dryBulbC, dryBulbC - differenceK, pressurePa).HumidityRatio);

    /// <summary>The air a share of the way (0 to 1) from one state to another.</summary>
    public static InletAir Between(InletAir from, InletAir to, double share) =>
        new(from.DryBulbC + share * (to.DryBulbC - from.DryBulbC),
            from.HumidityRatio + share * (to.HumidityRatio - from.HumidityRatio),
            from.FlowShare + share * (to.FlowShare - from.FlowShare),
            from.RunShare + share * (to.RunShare - from.RunShare));
}

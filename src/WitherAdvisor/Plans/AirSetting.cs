using WitherAdvisor.Air;

namespace WitherAdvisor.Plans;

/// <summary>What to set at one hour.</summary>
/// <param name="Hour">Hours from loading.</param>
/// <param name="Stage">Stage that it belongs to.</param>
/// <param name="Ambient">Ambient air expected.</param>
/// <param name="Plenum">Air to have under the mesh.</param>
/// <param name="HotAirShare">Share of hot air in the mix by mass of dry air, 0 to 1.</param>
/// <param name="HeatKW">Heat demand of the whole trough, kW.</param>
/// <param name="FanShare">Share of full airflow while the fan runs.</param>
/// <param name="RunShare">Share of the time that the fan runs.</param>
public sealed record AirSetting(
    double Hour, StageKind Stage, AirState Ambient, AirState Plenum, double HotAirShare, double HeatKW, double FanShare = 1, double RunShare = 1);

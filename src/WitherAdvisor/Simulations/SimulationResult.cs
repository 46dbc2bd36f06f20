using WitherAdvisor.Plans;

namespace WitherAdvisor.Simulations;

/// <summary>What the bed does under a fixed plan.</summary>
/// <param name="Curve">The bed by layer over time.</param>
/// <param name="Settings">Air by the hour.</param>
/// <param name="HoursToTarget">Hours to the site's target moisture; null where the plan stops before it.</param>
/// <param name="HoursToSurfaceDry">Hours until under 1 % of the surface water is left; 0 where there was none, null where the plan stops before it.</param>
/// <param name="FinalMoistureWetBasis">Moisture of the bed's mean at the stop, surface water counted in.</param>
/// <param name="LargestSpreadWetBasis">Largest spread of tissue moisture between layers at any time.</param>
/// <param name="Outturn">Withered weight over green weight with its surface water.</param>
/// <param name="OutturnOfLeaf">Withered weight over green weight without it.</param>
/// <param name="HeatKWh">Heat mixed in, kWh.</param>
/// <param name="Notices">Hard limits of the site that the fixed plan would break: no advice would.</param>
public sealed record SimulationResult(
    IReadOnlyList<CurvePoint> Curve,
    IReadOnlyList<AirSetting> Settings,
    double? HoursToTarget,
    double? HoursToSurfaceDry,
    double FinalMoistureWetBasis,
    double LargestSpreadWetBasis,
    double Outturn,
    double OutturnOfLeaf,
    double HeatKWh,
    IReadOnlyList<LimitNotice> Notices);

using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Simulations;

/// <summary>A wither whose plan the caller fixes, to see what it would do.</summary>
/// <param name="GreenWeightKg">As it came in, with its surface water, kg.</param>
/// <param name="Leaf">The leaf at loading.</param>
/// <param name="LoadedAt">Hour 0.</param>
/// <param name="Air">Ambient air; at least one reading with dry bulb and a humidity. One alone is held all night.</param>
/// <param name="Stages">In order of <see cref="FixedStage.ToHour"/>; the last one's end is the stop.</param>
/// <param name="TurnHours">Hours at which the leaf is turned.</param>
/// <param name="FanShare">Share of the trough's full airflow, above 0 to 1.</param>
public sealed record SimulationRequest(
    Site Site,
    Trough Trough,
    double GreenWeightKg,
    LeafState Leaf,
    DateTimeOffset LoadedAt,
    IReadOnlyList<WeatherReading> Air,
    IReadOnlyList<FixedStage> Stages,
    IReadOnlyList<double> TurnHours,
    double FanShare,
    WitherCoefficients Coefficients);

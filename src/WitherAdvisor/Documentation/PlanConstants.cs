using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Documentation;

/// <summary>Limits of a plan, what a site may set otherwise, and what a plan is chosen by.</summary>
internal static class PlanConstants
{
    private const string Practice = "Common practice, no published source";

    public static IReadOnlyList<ModelConstant> All { get; } =
    [
        Of("highest_plenum", WitherStyle.HighestPlenumC, "°C", CoefficientStatus.Published, "UPASI Tea Research Foundation: leaf reddens above"),
        Practised("difference_ceiling", WitherStyle.Short.HygrometricDifferenceCeilingK, "K"),
        Practised("wet_difference_ceiling", WitherStyle.Short.WetLeafHygrometricDifferenceCeilingK, "K"),
        Of("shortest_since_plucking", WitherStyle.Short.ShortestHoursSincePlucking, "h", CoefficientStatus.Published, "Tocklai: chemical wither"),
        Practised("shortest_in_dry_windy_spell", WitherStyle.Short.ShortestHoursSincePluckingInDryWindySpell, "h"),
        Of("longest_since_plucking", WitherStyle.Short.LongestHoursSincePlucking, "h", CoefficientStatus.Derived, "From the published 14 to 18 h usual, well under 30 h"),
        Practised("target_tolerance", HardLimits.TargetToleranceWetBasis, ModelConstant.MoisturePoints),
        Practised("wanted_difference_short", WitherStyle.Short.WantedHygrometricDifferenceK, "K"),
        Of("wanted_difference_long", WitherStyle.Long.WantedHygrometricDifferenceK, "K", CoefficientStatus.Published, "South Indian practice, 16 to 18 h"),
        Practised("target_moisture", WitherStyle.Short.TargetMoistureWetBasis, "1"),
        Practised("tolerated_spread", WitherStyle.Short.ToleratedSpreadWetBasis, ModelConstant.MoisturePoints),
        Practised("cooling", WitherStyle.Short.CoolingHours, "h"),
        Practised("plenum_margin", WitherStyle.Short.PlenumMarginK, "K"),
        Practised("spared_share", PlanProblem.SparedShare, "1"),
        Practised("hastened_share", PlanProblem.HastenedShare, "1"),
        Practised("most_turns", WitherStyle.Short.MostTurns, "1"),
        Practised("turn_free_last_hours", WitherStyle.Short.TurnFreeLastHours, "h"),
        Practised("least_hours_between_turns", WitherStyle.Short.LeastHoursBetweenTurns, "h"),
        Practised("tolerated_spreads_per_turn", TurnPlanner.ToleratedSpreadsPerTurn, "1"),
        Practised("least_run_share", AirScale.LeastRunShare, "1"),
        Practised("holding_run_share", StageLine.HoldingRunShare, "1"),
        Practised("hot_air", Site.UsualHotAirC, "°C"),
        Of("airflow", Trough.UsualAirflowM3PerSM2, "m³/s per m²", CoefficientStatus.Published, "UPASI Tea Research Foundation: 45 cfm/ft²"),
        Of("most_load", Trough.UsualMostLoadKgPerM2, "kg/m²", CoefficientStatus.FromMemory, "Somewhat over the published 2.5 to 3 kg/ft² (UPASI)"),
        Cost("cost_of_other_air", PlanCost.PerSquaredKelvinFromWanted),
        Cost("cost_of_surface_boost", PlanCost.PerKelvinOfSurfaceBoost),
        Cost("cost_of_slow_fan", PlanCost.PerShareOfFanSlowed),
        Cost("cost_of_late", PlanCost.PerHourLate),
        Cost("cost_of_early", PlanCost.PerHourEarly),
    ];

    private static ModelConstant Of(string code, double value, string unit, CoefficientStatus status, string source) =>
        new(code, ModelTopic.Plan, value, unit, status, source);

    private static ModelConstant Practised(string code, double value, string unit) =>
        Of(code, value, unit, CoefficientStatus.CommonPractice, Practice);

    private static ModelConstant Cost(string code, double value) =>
        Of(code, value, "", CoefficientStatus.CommonPractice, Practice);
}

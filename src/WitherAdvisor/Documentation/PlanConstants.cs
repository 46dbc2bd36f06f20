using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans.Search;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Documentation;

/// <summary>Limits of a plan, what a site may set otherwise, and what a plan is chosen by.</summary>
internal static class PlanConstants
{
    private const string Practice = "Common practice, no published source";

    public static IReadOnlyList<ModelConstant> All { get; } =
    [
        Of("highest_plenum", "Plenum dry bulb, never above: no site may set more", WitherStyle.HighestPlenumC, "°C", CoefficientStatus.Published, "UPASI Tea Research Foundation: leaf reddens above"),
        Practised("difference_ceiling", "Hygrometric difference, never above (site setting)", WitherStyle.Short.HygrometricDifferenceCeilingK, "K"),
        Practised("wet_difference_ceiling", "The same while water stands on the leaf (site setting)", WitherStyle.Short.WetLeafHygrometricDifferenceCeilingK, "K"),
        Of("shortest_since_plucking", "From the last plucking to rolling, at least (site setting)", WitherStyle.Short.ShortestHoursSincePlucking, "h", CoefficientStatus.Published, "Tocklai: chemical wither"),
        Practised("shortest_in_dry_windy_spell", "The same in a dry windy spell (site setting)", WitherStyle.Short.ShortestHoursSincePluckingInDryWindySpell, "h"),
        Of("longest_since_plucking", "From the first plucking to rolling, at most (site setting)", WitherStyle.Short.LongestHoursSincePlucking, "h", CoefficientStatus.Derived, "From the published 14 to 18 h usual, well under 30 h"),
        Practised("target_tolerance", "A plan may miss the target moisture by this, wet basis", HardLimits.TargetToleranceWetBasis, ModelConstant.MoisturePoints),
        Practised("wanted_difference_short", "Wanted hygrometric difference, short style (site setting)", WitherStyle.Short.WantedHygrometricDifferenceK, "K"),
        Of("wanted_difference_long", "Wanted hygrometric difference, long style (site setting)", WitherStyle.Long.WantedHygrometricDifferenceK, "K", CoefficientStatus.Published, "South Indian practice, 16 to 18 h"),
        Practised("target_moisture", "Moisture at which leaf is ready to roll, wet basis (site setting)", WitherStyle.Short.TargetMoistureWetBasis, "1"),
        Practised("tolerated_spread", "Spread of moisture between layers that turning has to hold, wet basis (site setting)", WitherStyle.Short.ToleratedSpreadWetBasis, ModelConstant.MoisturePoints),
        Practised("cooling", "Last hours on ambient air (site setting)", WitherStyle.Short.CoolingHours, "h"),
        Practised("worth_cooling", "… where the plenum is warmer than the ambient air by this", CandidateTrial.WorthCoolingK, "K"),
        Practised("hot_air", "Dry bulb of the hot air before mixing (site setting)", Site.UsualHotAirC, "°C"),
        Of("airflow", "Air per area of mesh (trough setting)", Trough.UsualAirflowM3PerSM2, "m³/s per m²", CoefficientStatus.Published, "UPASI Tea Research Foundation: 45 cfm/ft²"),
        Of("most_load", "Most leaf per area of mesh (trough setting)", Trough.UsualMostLoadKgPerM2, "kg/m²", CoefficientStatus.FromMemory, "Somewhat over the published 2.5 to 3 kg/ft² (UPASI)"),
        Cost("cost_of_other_air", "Cost of leaving the wanted difference, per K²", PlanCost.PerSquaredKelvinFromWanted),
        Cost("cost_of_surface_boost", "Cost of more while the leaf is wet, per K", PlanCost.PerKelvinOfSurfaceBoost),
        Cost("cost_of_slow_fan", "Cost of a slowed fan, per whole of its flow", PlanCost.PerShareOfFanSlowed),
        Cost("cost_of_late", "Cost of an hour late", PlanCost.PerHourLate),
        Cost("cost_of_early", "Cost of an hour early", PlanCost.PerHourEarly),
        Cost("cost_off_target", "Cost of a point of moisture off the target", PlanCost.PerPointOffTarget),
        Cost("cost_of_spread", "Cost of a point over the tolerated spread", PlanCost.PerPointOverTheSpread),
        Cost("cost_of_heat", "Cost of heat, per kWh and kg of leaf", PlanCost.PerKWhPerKg),
        Cost("cost_of_turn", "Cost of a turn", PlanCost.PerTurn),
    ];

    private static ModelConstant Of(string code, string meaning, double value, string unit, CoefficientStatus status, string source) =>
        new(code, ModelTopic.Plan, meaning, value, unit, status, source);

    private static ModelConstant Practised(string code, string meaning, double value, string unit) =>
        Of(code, meaning, value, unit, CoefficientStatus.CommonPractice, Practice);

    private static ModelConstant Cost(string code, string meaning, double value) =>
        Of(code, meaning, value, "", CoefficientStatus.CommonPractice, Practice);
}

using WitherAdvisor.Air;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Uncertainty;

namespace WitherAdvisor.Loft.Records.Sent;

/// <summary>The plan of an answer.</summary>
internal static class SentPlan
{
    /// <summary>What to set and expect.</summary>
    /// <param name="pressurePa">Of the site: an answer does not tell it.</param>
    public static WitherPlan Read(SentFields plan, WitherPlan? digits, double pressurePa)
    {
        SentFields turning = plan.Object("turning");
        SentFields expected = plan.Object("expected");
        double fanShare = plan.Fraction("fan_share_percent", digits?.FanShare);
        return new(
            SentAdvice.Beside(plan.List("stages"), digits?.Stages, (one, exact) => Stage(one, exact, fanShare)),
            SentAdvice.Beside(plan.List("settings"), digits?.Settings, (one, exact) => Setting(one, exact, pressurePa, fanShare)),
            turning.CountOrNull("every_hours"),
            turning.Numbers("at_hours", digits?.TurnHours),
            plan.Object("ready").Number("stop_hours", 2, digits?.StopHour),
            fanShare,
            expected.Number("mean_hygrometric_difference_k", 2, digits?.MeanHygrometricDifferenceK),
            expected.Number("heat_kwh", 1, digits?.HeatKWh),
            expected.Fraction("largest_spread_points", digits?.LargestSpreadWetBasis),
            expected.Fraction("outturn_percent", digits?.Outturn),
            expected.Fraction("outturn_of_leaf_percent", digits?.OutturnOfLeaf))
        {
            ReadyHour = Later(plan.Object("ready"), "ready_hours", 2, digits?.ReadyHour) ?? plan.Object("ready").Number("stop_hours", 2, digits?.StopHour),
            HeldWellToHour = Later(plan.Object("ready"), "held_well_to_hours", 2, digits?.HeldWellToHour),
            RunShare = Later(plan, "run_share_percent", 2, digits?.RunShare, 100) ?? 1,
            HeatKWhPerKgMadeTea = Later(expected, "heat_kwh_per_kg_made_tea", 2, digits?.HeatKWhPerKgMadeTea),
            FanKWh = Later(expected, "fan_kwh", 1, digits?.FanKWh),
            SpreadWithOneMoreTurnWetBasis = Later(turning, "largest_spread_with_one_more_points", 2, digits?.SpreadWithOneMoreTurnWetBasis, 100),
        };
    }

    /// <summary>A number that answers did not always have.</summary>
    private static double? Later(SentFields fields, string name, int places, double? digits, double perUnit = 1) =>
        fields.Holds(name) ? fields.Number(name, places, digits, perUnit) : null;

    public static Percentiles ReadyHours(SentFields ready, Percentiles? digits) => new(
        ready.NumberOrNull("p10_hours", 2, digits?.P10),
        ready.NumberOrNull("p50_hours", 2, digits?.P50),
        ready.NumberOrNull("p90_hours", 2, digits?.P90));

    public static Percentiles FinalMoisture(SentFields expected, Percentiles? digits) => new(
        expected.FractionOrNull("final_moisture_p10_wet_basis_percent", digits?.P10),
        expected.FractionOrNull("final_moisture_p50_wet_basis_percent", digits?.P50),
        expected.FractionOrNull("final_moisture_p90_wet_basis_percent", digits?.P90));

    private static PlanStage Stage(SentFields stage, PlanStage? digits, double fanShare) => new(
        stage.Word<StageKind>("stage"),
        stage.Number("from_hour", 2, digits?.FromHour),
        stage.Number("to_hour", 2, digits?.ToHour),
        stage.NumberOrNull("wanted_hygrometric_difference_k", 2, digits?.WantedHygrometricDifferenceK),
        Later(stage, "fan_share_percent", 2, digits?.FanShare, 100) ?? fanShare,
        Later(stage, "run_share_percent", 2, digits?.RunShare, 100) ?? 1);

    private static AirSetting Setting(SentFields setting, AirSetting? digits, double pressurePa, double fanShare) => new(
        setting.Number("hour", 2, digits?.Hour),
        setting.Word<StageKind>("stage"),
        Ambient(setting, digits?.Ambient, pressurePa),
        Plenum(setting, digits?.Plenum, pressurePa),
        setting.Fraction("hot_air_share_percent", digits?.HotAirShare),
        setting.Number("heat_kw", 2, digits?.HeatKW),
        Later(setting, "fan_share_percent", 2, digits?.FanShare, 100) ?? fanShare,
        Later(setting, "run_share_percent", 2, digits?.RunShare, 100) ?? 1);

    private static AirState Ambient(SentFields setting, AirState? digits, double pressurePa)
    {
        double dryBulbC = setting.Number("ambient_dry_bulb_c", 2, digits?.DryBulbC);
        double humidity = setting.Fraction("ambient_relative_humidity_percent", digits?.RelativeHumidity);
        return digits is { } exact && dryBulbC == exact.DryBulbC && humidity == exact.RelativeHumidity
            ? exact
            : AirState.FromRelativeHumidity(dryBulbC, humidity, pressurePa);
    }

    private static AirState Plenum(SentFields setting, AirState? digits, double pressurePa)
    {
        double dryBulbC = setting.Number("plenum_dry_bulb_c", 2, digits?.DryBulbC);
        double wetBulbC = setting.Number("plenum_wet_bulb_c", 2, digits?.WetBulbC);
        return digits is { } exact && dryBulbC == exact.DryBulbC && wetBulbC == exact.WetBulbC
            ? exact
            : AirState.FromWetBulb(dryBulbC, wetBulbC, pressurePa);
    }
}

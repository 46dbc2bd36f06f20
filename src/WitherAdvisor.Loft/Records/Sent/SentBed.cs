using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Explaining;
using WitherAdvisor.Plans.Writing;

namespace WitherAdvisor.Loft.Records.Sent;

/// <summary>Curve, effects, checks, limits and reliefs of an answer.</summary>
internal static class SentBed
{
    private const int PlacesWithoutUnit = 3;

    public static CurvePoint Point(SentFields point, CurvePoint? digits) => new(
        point.Number("hour", 2, digits?.Hour),
        point.Fraction("bottom_moisture_wet_basis_percent", digits?.BottomMoistureWetBasis),
        point.Fraction("middle_moisture_wet_basis_percent", digits?.MiddleMoistureWetBasis),
        point.Fraction("top_moisture_wet_basis_percent", digits?.TopMoistureWetBasis),
        point.Fraction("mean_moisture_wet_basis_percent", digits?.MeanMoistureWetBasis),
        point.Number("surface_water_kg_per_kg", 4, digits?.SurfaceWaterKgPerKg),
        point.Number("leaf_weight_kg", 2, digits?.LeafWeightKg),
        point.Number("exhaust_dry_bulb_c", 2, digits?.ExhaustDryBulbC),
        point.Holds("bottom_leaf_c") ? point.Number("bottom_leaf_c", 2, digits?.BottomLeafC) : null,
        point.Holds("top_leaf_c") ? point.Number("top_leaf_c", 2, digits?.TopLeafC) : null);

    public static FactorEffect Effect(SentFields effect, FactorEffect? digits) => new(
        effect.Text("code"),
        effect.NumberOrNull("stop_change_hours", 2, digits?.HoursChange),
        effect.NumberOrNull("plenum_dry_bulb_change_k", 2, digits?.PlenumDryBulbChangeK),
        effect.Holds("turn_interval_hours") ? effect.Count("turn_interval_hours") : null,
        effect.Holds("turns") ? effect.Count("turns") : null);

    public static WeighingCheck Check(SentFields check, WeighingCheck? digits) => new(
        check.Number("hour", 2, digits?.Hour),
        check.Number("expected_weight_kg", 2, digits?.ExpectedWeightKg),
        check.Number("low_weight_kg", 2, digits?.LowWeightKg),
        check.Number("high_weight_kg", 2, digits?.HighWeightKg),
        check.Number("expected_sample_weight_kg", 2, digits?.ExpectedWeightOfSampleKg),
        Response(check.Object("if_low"), digits?.IfLow),
        Response(check.Object("if_high"), digits?.IfHigh));

    public static LimitNotice Notice(SentFields notice, LimitNotice? digits)
    {
        LimitKind limit = notice.Word<LimitKind>("limit");
        double perUnit = limit is LimitKind.TargetMoisture or LimitKind.Spread ? 100 : 1;
        return new(
            limit,
            notice.NumberOrNull("allowed", PlacesWithoutUnit, digits?.Allowed, perUnit),
            notice.NumberOrNull("reached", PlacesWithoutUnit, digits?.Reached, perUnit));
    }

    public static Relief Relief(SentFields relief, Relief? digits)
    {
        ReliefKind kind = relief.Word<ReliefKind>("relief");
        return new(kind, relief.NumberOrNull("amount", PlacesWithoutUnit, digits?.Amount, kind == ReliefKind.SlowerFan ? 100 : 1));
    }

    private static CheckResponse Response(SentFields response, CheckResponse? digits) => new(
        response.NumberOrNull("ready_hour", 2, digits?.ReadyHour),
        response.NumberOrNull("plenum_dry_bulb_change_k", 2, digits?.PlenumDryBulbChangeK));
}

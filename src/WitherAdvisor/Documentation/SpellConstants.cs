using WitherAdvisor.Coefficients;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Documentation;

/// <summary>Thresholds between the spells.</summary>
internal static class SpellConstants
{
    private const string Source = "Common practice, no published source; a starting value to be learned";
    private static readonly SpellThresholds Usual = new();

    public static IReadOnlyList<ModelConstant> All { get; } =
    [
        Of("wet_begins_at_rain", "A wet spell begins at this rain in 72 h", Usual.WetRainIn72HoursMm, "mm"),
        Of("wet_begins_at_leaf", "… or at this much rain on the leaf", Usual.WetLeafKgPerKg, "kg/kg"),
        Of("wet_ends_below_rain", "It ends below this rain in 72 h", Usual.WetEndsBelowRainIn72HoursMm, "mm"),
        Of("wet_ends_below_leaf", "… and this much rain on the leaf", Usual.WetEndsBelowLeafKgPerKg, "kg/kg"),
        Of("dry_begins_below_stress", "A dry windy spell begins below this K_s", Usual.DryStressBelow, ""),
        Of("dry_begins_below_rain", "… with less than this rain in 10 days", Usual.DryRainIn10DaysBelowMm, "mm"),
        new("dry_begins_at_power", ModelTopic.Spell, "… and drying power (deficit of the day times wind) over this, moved by the site's own upper quarter",
            Usual.DryingPowerKPaMPerS, "kPa·m/s", CoefficientStatus.Derived, "Geometric mean of an ordinary and a dry windy day"),
        Of("dry_ends_above_stress", "It ends above this K_s", Usual.DryEndsAboveStress, ""),
        Of("dry_ends_at_rain", "… or at this rain in 10 days", Usual.DryEndsAtRainIn10DaysMm, "mm"),
        Of("dry_ends_below_power", "… or below this share of the drying power that begins it", Usual.DryEndsBelowPowerShare, "1"),
    ];

    private static ModelConstant Of(string code, string meaning, double value, string unit) =>
        new(code, ModelTopic.Spell, meaning, value, unit, CoefficientStatus.CommonPractice, Source);
}

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
        Of("wet_begins_at_rain", Usual.WetRainIn72HoursMm, "mm"),
        Of("wet_begins_at_leaf", Usual.WetLeafKgPerKg, "kg/kg"),
        Of("wet_ends_below_rain", Usual.WetEndsBelowRainIn72HoursMm, "mm"),
        Of("wet_ends_below_leaf", Usual.WetEndsBelowLeafKgPerKg, "kg/kg"),
        Of("dry_begins_below_stress", Usual.DryStressBelow, ""),
        Of("dry_begins_below_rain", Usual.DryRainIn10DaysBelowMm, "mm"),
        new("dry_begins_at_power", ModelTopic.Spell,
            Usual.DryingPowerKPaMPerS, "kPa·m/s", CoefficientStatus.Derived, "Geometric mean of an ordinary and a dry windy day"),
        Of("dry_ends_above_stress", Usual.DryEndsAboveStress, ""),
        Of("dry_ends_at_rain", Usual.DryEndsAtRainIn10DaysMm, "mm"),
        Of("dry_ends_below_power", Usual.DryEndsBelowPowerShare, "1"),
    ];

    private static ModelConstant Of(string code, double value, string unit) =>
        new(code, ModelTopic.Spell, value, unit, CoefficientStatus.CommonPractice, Source);
}

using WitherAdvisor.Spells;
using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Wording;

/// <summary>What decided a day's spell, in words with the number and the threshold.</summary>
public static class SpellReasonWording
{
    public static string Sentence(ReviewSpell spell, SpellThresholds thresholds) => spell.Reason switch
    {
        SpellReason.NoThresholdReached =>
            $"{Rain(spell.Spell.RainLast72HoursMm)} fell in 72 hours and {Leaf(spell)} of rain would be on the leaf: neither begins a wet spell, and {WhyNotDry(spell, thresholds)}.",
        SpellReason.TooLittleKnown => "Rain of too many of the last 72 hours is not known.",
        SpellReason.RainIn72Hours =>
            $"{AtLeast(spell.Spell.RainLast72HoursMm, thresholds.WetRainIn72HoursMm)} fell in 72 hours; a wet spell begins at {Figures.Millimetres(thresholds.WetRainIn72HoursMm)}.",
        SpellReason.RainOnLeaf =>
            $"Leaf would carry {Leaf(spell)} of its weight in rain; a wet spell begins at {Figures.Percent(thresholds.WetLeafKgPerKg)}.",
        SpellReason.RainIn72HoursStill =>
            $"{AtLeast(spell.Spell.RainLast72HoursMm, thresholds.WetEndsBelowRainIn72HoursMm)} fell in 72 hours; a wet spell ends below {Figures.Millimetres(thresholds.WetEndsBelowRainIn72HoursMm)}.",
        SpellReason.RainOnLeafStill =>
            $"Leaf would carry {Leaf(spell)} of its weight in rain; a wet spell ends below {Figures.Percent(thresholds.WetEndsBelowLeafKgPerKg)}.",
        SpellReason.DroughtAndWind =>
            $"K_s {Stress(spell)} is below {Figures.Fixed(thresholds.DryStressBelow, 1)}, {Rain(spell.Spell.RainLast10DaysMm)} of rain in 10 days below {Figures.Millimetres(thresholds.DryRainIn10DaysBelowMm)}, and {Power(spell)} reaches {Figures.Fixed(spell.Spell.DryingPowerThresholdKPaMPerS, 1)}.",
        SpellReason.DroughtAndWindStill =>
            $"K_s {Stress(spell)} is not above {Figures.Fixed(thresholds.DryEndsAboveStress, 1)}, and neither {Figures.Millimetres(thresholds.DryEndsAtRainIn10DaysMm)} of rain in 10 days ({Rain(spell.Spell.RainLast10DaysMm)}) nor {Power(spell)} below {Figures.Fixed(thresholds.DryEndsBelowPowerShare * spell.Spell.DryingPowerThresholdKPaMPerS, 1)} has ended it.",
        _ => throw new ArgumentOutOfRangeException(nameof(spell), spell.Reason, "No words for this rule."),
    };

    private static string WhyNotDry(ReviewSpell spell, SpellThresholds thresholds) => spell.Spell switch
    {
        { WaterStress: { } stress } when stress >= thresholds.DryStressBelow =>
            $"K_s {Stress(spell)} is no drought, which begins below {Figures.Fixed(thresholds.DryStressBelow, 1)}",
        { RainLast10DaysMm: { } rainMm } when rainMm >= thresholds.DryRainIn10DaysBelowMm =>
            $"{Rain(rainMm)} in 10 days is too much for a dry windy one, which wants less than {Figures.Millimetres(thresholds.DryRainIn10DaysBelowMm)}",
        { DryingPowerKPaMPerS: not null } =>
            $"{Power(spell)} is too little for a dry windy one, which wants {Figures.Fixed(spell.Spell.DryingPowerThresholdKPaMPerS, 1)}",
        _ => "for a dry windy one too little is known",
    };

    private static string Rain(double? millimetres) => millimetres is { } known ? Figures.Millimetres(known) : "an unknown amount";

    private static string AtLeast(double? millimetres, double threshold) =>
        millimetres is { } known ? Figures.Millimetres(known) : $"At least {Figures.Millimetres(threshold)}";

    private static string Leaf(ReviewSpell spell) => Figures.Percent(spell.RainOnLeafKgPerKg);

    private static string Stress(ReviewSpell spell) => spell.Spell.WaterStress is { } stress ? Figures.Fixed(stress, 2) : "unknown";

    private static string Power(ReviewSpell spell) => spell.Spell.DryingPowerKPaMPerS is { } power
        ? $"drying power {Figures.Fixed(power, 1)} kPa·m/s"
        : "an unknown drying power";
}

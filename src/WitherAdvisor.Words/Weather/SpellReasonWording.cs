using WitherAdvisor.Review;
using WitherAdvisor.Spells;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Weather;

/// <summary>What decided a day's spell, in words with the number and the threshold.</summary>
public static class SpellReasonWording
{
    public static string Sentence(Wordbook words, ReviewSpell spell, SpellThresholds thresholds) => spell.Reason switch
    {
        SpellReason.NoThresholdReached => Say(
            words, spell, ("rain", Rain(words, spell.Spell.RainLast72HoursMm)), ("leaf", Leaf(spell)), ("why_not_dry", WhyNotDry(words, spell, thresholds))),
        SpellReason.TooLittleKnown => Say(words, spell),
        SpellReason.RainIn72Hours => Say(
            words, spell,
            ("rain", AtLeast(words, spell.Spell.RainLast72HoursMm, thresholds.WetRainIn72HoursMm)),
            ("threshold", Figures.Millimetres(thresholds.WetRainIn72HoursMm))),
        SpellReason.RainOnLeaf => Say(words, spell, ("leaf", Leaf(spell)), ("threshold", Figures.Percent(thresholds.WetLeafKgPerKg))),
        SpellReason.RainIn72HoursStill => Say(
            words, spell,
            ("rain", AtLeast(words, spell.Spell.RainLast72HoursMm, thresholds.WetEndsBelowRainIn72HoursMm)),
            ("threshold", Figures.Millimetres(thresholds.WetEndsBelowRainIn72HoursMm))),
        SpellReason.RainOnLeafStill => Say(words, spell, ("leaf", Leaf(spell)), ("threshold", Figures.Percent(thresholds.WetEndsBelowLeafKgPerKg))),
        SpellReason.DroughtAndWind => Say(
            words, spell,
            ("stress", Stress(words, spell)), ("stress_threshold", Figures.Fixed(thresholds.DryStressBelow, 1)),
            ("rain", Rain(words, spell.Spell.RainLast10DaysMm)), ("rain_threshold", Figures.Millimetres(thresholds.DryRainIn10DaysBelowMm)),
            ("power", Power(words, spell)), ("power_threshold", Figures.Fixed(spell.Spell.DryingPowerThresholdKPaMPerS, 1))),
        SpellReason.DroughtAndWindStill => Say(
            words, spell,
            ("stress", Stress(words, spell)), ("stress_threshold", Figures.Fixed(thresholds.DryEndsAboveStress, 1)),
            ("rain_threshold", Figures.Millimetres(thresholds.DryEndsAtRainIn10DaysMm)), ("rain", Rain(words, spell.Spell.RainLast10DaysMm)),
            ("power", Power(words, spell)),
            ("power_threshold", Figures.Fixed(thresholds.DryEndsBelowPowerShare * spell.Spell.DryingPowerThresholdKPaMPerS, 1))),
        _ => throw new ArgumentOutOfRangeException(nameof(spell), spell, "No words for this rule."),
    };

    private static string Say(Wordbook words, ReviewSpell spell, params ReadOnlySpan<(string, object)> values) =>
        words.Say(EnumKeys.Of(spell.Reason), values);

    private static string WhyNotDry(Wordbook words, ReviewSpell spell, SpellThresholds thresholds) => spell.Spell switch
    {
        { WaterStress: { } stress } when stress >= thresholds.DryStressBelow => words.Say(
            "not_dry.no_drought", ("stress", Stress(words, spell)), ("threshold", Figures.Fixed(thresholds.DryStressBelow, 1))),
        { RainLast10DaysMm: { } rainMm } when rainMm >= thresholds.DryRainIn10DaysBelowMm => words.Say(
            "not_dry.rain", ("rain", Figures.Millimetres(rainMm)), ("threshold", Figures.Millimetres(thresholds.DryRainIn10DaysBelowMm))),
        { DryingPowerKPaMPerS: not null } => words.Say(
            "not_dry.power", ("power", Power(words, spell)), ("threshold", Figures.Fixed(spell.Spell.DryingPowerThresholdKPaMPerS, 1))),
        _ => words["not_dry.not_known"],
    };

    private static string Rain(Wordbook words, double? millimetres) =>
        millimetres is { } known ? Figures.Millimetres(known) : words["spell_reason.unknown_amount"];

    private static string AtLeast(Wordbook words, double? millimetres, double threshold) => millimetres is { } known
        ? Figures.Millimetres(known)
        : words.Say("spell_reason.at_least", ("amount", Figures.Millimetres(threshold)));

    private static string Leaf(ReviewSpell spell) => Figures.Percent(spell.RainOnLeafKgPerKg);

    private static string Stress(Wordbook words, ReviewSpell spell) =>
        spell.Spell.WaterStress is { } stress ? Figures.Fixed(stress, 2) : words["spell_reason.unknown"];

    private static string Power(Wordbook words, ReviewSpell spell) => spell.Spell.DryingPowerKPaMPerS is { } power
        ? words.Say("spell_reason.power", ("power", Figures.Fixed(power, 1)))
        : words["spell_reason.unknown_power"];
}

using WitherAdvisor.Spells;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Weather;

/// <summary>The weather the leaf grew in, in words, with the numbers that led to it.</summary>
public static class SpellWording
{
    /// <summary>For a table.</summary>
    public static string Short(Wordbook words, SpellKind? spell) => spell is { } known ? words.Name(known, "short") : words["spell.not_known"];

    public static string Sentence(Wordbook words, Spell spell) => string.Join(
        ' ',
        words.Say("spell.name_and_meaning", ("name", Codes.Sentence(words.Name(spell.Kind))), ("meaning", words.Name(spell.Kind, "meaning"))),
        words.Say("spell.rain", ("three_days", Rain(words, spell.RainLast72HoursMm)), ("ten_days", Rain(words, spell.RainLast10DaysMm))),
        Water(words, spell),
        Drying(words, spell));

    private static string Rain(Wordbook words, double? millimetres) =>
        millimetres is { } known ? Figures.Millimetres(known) : words["spell.rain_not_known"];

    private static string Water(Wordbook words, Spell spell) => (spell.WaterStress, spell.WaterStressStandardDeviation) switch
    {
        ({ } stress, { } error) => words.Say("spell.soil_water_with_error", ("share", Figures.Percent(stress)), ("error", Figures.Fixed(error * 100, 0))),
        ({ } stress, null) => words.Say("spell.soil_water", ("share", Figures.Percent(stress))),
        _ => words["spell.soil_water_not_known"],
    };

    private static string Drying(Wordbook words, Spell spell) => spell.DryingPowerKPaMPerS is { } power
        ? words.Say("spell.drying", ("power", Figures.Fixed(power, 1)), ("strong", Figures.Fixed(spell.DryingPowerThresholdKPaMPerS, 1)))
        : words["spell.drying_not_known"];
}

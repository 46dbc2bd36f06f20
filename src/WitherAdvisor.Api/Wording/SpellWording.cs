using WitherAdvisor.Spells;

namespace WitherAdvisor.Api.Wording;

/// <summary>The weather the leaf grew in, in words, with the numbers that led to it.</summary>
public static class SpellWording
{
    public static string Name(SpellKind spell) => spell switch
    {
        SpellKind.Ordinary => "ordinary weather",
        SpellKind.Wet => "wet spell",
        SpellKind.DryWindy => "dry windy spell",
        _ => throw new ArgumentOutOfRangeException(nameof(spell), spell, "No words for this spell."),
    };

    /// <summary>For a table.</summary>
    public static string Short(SpellKind spell) => spell switch
    {
        SpellKind.Ordinary => "ordinary",
        SpellKind.Wet => "wet",
        SpellKind.DryWindy => "dry windy",
        _ => throw new ArgumentOutOfRangeException(nameof(spell), spell, "No words for this spell."),
    };

    /// <summary>What the spell means for the wither.</summary>
    public static string Meaning(SpellKind spell) => spell switch
    {
        SpellKind.Ordinary => "Neither rain nor drought stands out.",
        SpellKind.Wet => "Rain of the last days is on the leaf and has to be driven off first.",
        SpellKind.DryWindy => "Drought with strong dry wind, the quality season: wither gently.",
        _ => throw new ArgumentOutOfRangeException(nameof(spell), spell, "No words for this spell."),
    };

    public static string Sentence(Spell spell) => $"{Codes.Sentence(Name(spell.Kind))}. {Meaning(spell.Kind)} {Numbers(spell)}";

    private static string Numbers(Spell spell) => string.Join(' ',
        $"Rain in the last 72 hours: {Rain(spell.RainLast72HoursMm)}; in the last 10 days: {Rain(spell.RainLast10DaysMm)}.",
        Water(spell),
        Drying(spell));

    private static string Rain(double? millimetres) => millimetres is { } known ? Figures.Millimetres(known) : "not known";

    private static string Water(Spell spell) => spell.WaterStress is { } stress
        ? $"The soil gave the bushes {Figures.Percent(stress)}{PlusMinus(spell.WaterStressStandardDeviation)} of the water they wanted (K_s of FAO-56)."
        : "How much water the soil gave the bushes is not known.";

    private static string PlusMinus(double? deviation) =>
        deviation is { } known ? $" ± {Figures.Fixed(known * 100, 0)}" : "";

    private static string Drying(Spell spell) => spell.DryingPowerKPaMPerS is { } power
        ? $"Drying power of the days' air and wind: {Figures.Fixed(power, 1)} kPa·m/s; strong here is above {Figures.Fixed(spell.DryingPowerThresholdKPaMPerS, 1)}."
        : "Drying power of the days' air and wind: not known.";
}

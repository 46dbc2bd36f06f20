namespace WitherAdvisor.Spells;

/// <summary>Which spell, and the numbers that led to it. Null is unknown.</summary>
/// <param name="Kind">The spell at plucking.</param>
/// <param name="RainLast72HoursMm">mm.</param>
/// <param name="RainLast10DaysMm">mm.</param>
/// <param name="WaterStress">K_s of FAO-56: 1 no stress, 0 none of the water the crop wants.</param>
/// <param name="WaterStressStandardDeviation">Of K_s.</param>
/// <param name="DryingPowerKPaMPerS">Mean daytime vapour-pressure deficit times wind of the last three days, kPa·m/s.</param>
/// <param name="DryingPowerThresholdKPaMPerS">What it is held against, kPa·m/s.</param>
public sealed record Spell(
    SpellKind Kind,
    double? RainLast72HoursMm,
    double? RainLast10DaysMm,
    double? WaterStress,
    double? WaterStressStandardDeviation,
    double? DryingPowerKPaMPerS,
    double DryingPowerThresholdKPaMPerS);

using WitherAdvisor.Spells;

namespace WitherAdvisor.Review;

/// <summary>What 24 hours of weather did. Values of its end stand for its last instant.</summary>
/// <param name="From">Start, exclusive.</param>
/// <param name="To">End, inclusive.</param>
/// <param name="EndsAhead">Its end had not come when the weather was reviewed.</param>
/// <param name="RainMm">Rain in it, mm; unknown where less than 70 % of its hours is known.</param>
/// <param name="KnownRainMm">What fell in its known hours, mm: at least so much.</param>
/// <param name="RainKnownH">Hours whose rain is known.</param>
/// <param name="ReferenceMm">ET_0 of FAO-56, mm.</param>
/// <param name="DepletionMm">Soil water short of field capacity at its end, mm.</param>
/// <param name="WaterStress">K_s of FAO-56 at its end, 0 to 1.</param>
/// <param name="WaterStressStandardDeviation">Of K_s.</param>
/// <param name="DryingPowerKPaMPerS">Mean vapour-pressure deficit times wind of its daylight, kPa·m/s.</param>
/// <param name="Spell">The spell at its end.</param>
public sealed record ReviewDay(
    DateTimeOffset From,
    DateTimeOffset To,
    bool EndsAhead,
    ReviewValue RainMm,
    double KnownRainMm,
    double RainKnownH,
    ReviewValue ReferenceMm,
    ReviewValue DepletionMm,
    ReviewValue WaterStress,
    double WaterStressStandardDeviation,
    ReviewValue DryingPowerKPaMPerS,
    ReviewSpell Spell);

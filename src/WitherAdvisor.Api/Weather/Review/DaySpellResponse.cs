using WitherAdvisor.Fields.Json;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>The spell at the end of a day, the numbers behind it and the rule that decided it.</summary>
[Computed]
public sealed record DaySpellResponse
{
    /// <summary>Which spell; null where too little is known.</summary>
    /// <example>wet</example>
    public required SpellKind? Kind { get; init; }

    /// <summary>The rule that decided.</summary>
    /// <example>rain_in72_hours</example>
    public required SpellReason DecidedBy { get; init; }

    /// <summary>The same as a sentence, with number and threshold.</summary>
    /// <example>62 mm fell in 72 hours; a wet spell begins at 25 mm.</example>
    public required string Because { get; init; }

    /// <summary>Rain of the last 72 hours.</summary>
    /// <example>61.5</example>
    public required double? RainLastThreeDaysMm { get; init; }

    /// <summary>Rain of the last 10 days.</summary>
    /// <example>84</example>
    public required double? RainLastTenDaysMm { get; init; }

    /// <summary>Rain that leaf plucked then would carry.</summary>
    /// <example>0.16</example>
    public required double RainOnLeafKgPerKg { get; init; }

    /// <summary>K_s as the spell was judged by it, from a usual start where too little rain is known.</summary>
    /// <example>1</example>
    public required double? WaterStressFraction { get; init; }

    /// <summary>How far off it may be.</summary>
    /// <example>0.1</example>
    public required double? WaterStressStandardDeviationFraction { get; init; }

    /// <summary>Mean daytime vapour-pressure deficit times wind of the last three days.</summary>
    /// <example>0.9</example>
    public required double? DryingPowerKpaMPerS { get; init; }

    /// <summary>What it is held against: the site's own upper quarter where 30 days are known.</summary>
    /// <example>2.5</example>
    public required double DryingPowerThresholdKpaMPerS { get; init; }
}

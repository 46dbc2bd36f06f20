using WitherAdvisor.Fields.Json;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>The weather the leaf grew in, and the numbers that say so. Null is unknown.</summary>
[Computed]
public sealed record SpellResponse
{
    /// <summary>Which spell.</summary>
    /// <example>wet</example>
    public required SpellKind Kind { get; init; }

    /// <summary>Rain of the 72 hours before plucking.</summary>
    /// <example>61.5</example>
    public required double? RainLastThreeDaysMm { get; init; }

    /// <summary>Rain of the 10 days before plucking.</summary>
    /// <example>84</example>
    public required double? RainLastTenDaysMm { get; init; }

    /// <summary>K_s of FAO-56: 1 is no stress, 0 is no water for the crop.</summary>
    /// <example>1</example>
    public required double? WaterStressFraction { get; init; }

    /// <summary>How far off it may be.</summary>
    /// <example>0.1</example>
    public required double? WaterStressStandardDeviationFraction { get; init; }

    /// <summary>Mean daytime vapour-pressure deficit times wind of the last three days.</summary>
    /// <example>0.9</example>
    public required double? DryingPowerKpaMPerS { get; init; }

    /// <summary>What it is held against.</summary>
    /// <example>2.5</example>
    public required double DryingPowerThresholdKpaMPerS { get; init; }
}

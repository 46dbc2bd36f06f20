using WitherAdvisor.Fields.Json;
using WitherAdvisor.Review;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>What 24 hours of weather did. Null is unknown, and why stands in unknown.</summary>
[Computed]
public sealed record ReviewDayResponse
{
    /// <summary>Start, exclusive.</summary>
    /// <example>2026-02-28T00:30:00+05:30</example>
    public required DateTimeOffset From { get; init; }

    /// <summary>End, inclusive.</summary>
    /// <example>2026-03-01T00:30:00+05:30</example>
    public required DateTimeOffset To { get; init; }

    /// <summary>Whether its end had not come at the moment of the review.</summary>
    /// <example>false</example>
    public required bool EndsAhead { get; init; }

    /// <summary>Rain in it; null where less than 70 % of its hours is known.</summary>
    /// <example>12.4</example>
    public required double? RainMm { get; init; }

    /// <summary>What fell in its known hours: at least so much.</summary>
    /// <example>12.4</example>
    public required double KnownRainMm { get; init; }

    /// <summary>Hours whose rain is known.</summary>
    /// <example>24</example>
    public required double RainKnownHours { get; init; }

    /// <summary>Reference evapotranspiration ET_0 of FAO-56.</summary>
    /// <example>2.8</example>
    public required double? ReferenceEvapotranspirationMm { get; init; }

    /// <summary>Soil water short of field capacity at its end.</summary>
    /// <example>21.5</example>
    public required double? SoilDepletionMm { get; init; }

    /// <summary>K_s of FAO-56 at its end: 1 is no stress, 0 is no water for the crop.</summary>
    /// <example>1</example>
    public required double? WaterStressFraction { get; init; }

    /// <summary>Mean vapour-pressure deficit times wind of its daylight.</summary>
    /// <example>1.2</example>
    public required double? DryingPowerKpaMPerS { get; init; }

    /// <summary>How its values came to be known, the least sure of its hours.</summary>
    /// <example>read</example>
    public required ValueStanding Standing { get; init; }

    /// <summary>The spell at its end.</summary>
    public required DaySpellResponse Spell { get; init; }

    /// <summary>Why a value is null; empty where none is.</summary>
    public required IReadOnlyList<UnknownResponse> Unknown { get; init; }
}

using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>The weather at one hour. Null is unknown, and why stands in unknown.</summary>
[Computed]
public sealed record ReviewHourResponse
{
    /// <summary>Rain is of the hour before it, all else of this instant.</summary>
    /// <example>2026-03-01T10:00:00+05:30</example>
    public required DateTimeOffset Time { get; init; }

    /// <summary>Whether it had not come at the moment of the review.</summary>
    /// <example>false</example>
    public required bool IsAhead { get; init; }

    /// <summary>Dry bulb.</summary>
    /// <example>19.4</example>
    public required double? DryBulbC { get; init; }

    /// <summary>Dew point.</summary>
    /// <example>16.9</example>
    public required double? DewPointC { get; init; }

    /// <summary>Thermodynamic wet bulb at the site's pressure.</summary>
    /// <example>17.8</example>
    public required double? WetBulbC { get; init; }

    /// <summary>Dry bulb minus wet bulb.</summary>
    /// <example>1.6</example>
    public required double? HygrometricDifferenceK { get; init; }

    /// <summary>Rain.</summary>
    /// <example>0.4</example>
    public required double? RainMm { get; init; }

    /// <summary>Wind at 10 m height.</summary>
    /// <example>1.5</example>
    public required double? WindMPerS { get; init; }

    /// <summary>Water on the leaf had it been plucked then, per kg of leaf without it.</summary>
    /// <example>0.12</example>
    public required double? SurfaceWaterKgPerKg { get; init; }

    /// <summary>How each came to be known.</summary>
    public required HourStandingResponse Standing { get; init; }

    /// <summary>Why a value is null; empty where none is.</summary>
    public required IReadOnlyList<UnknownResponse> Unknown { get; init; }
}

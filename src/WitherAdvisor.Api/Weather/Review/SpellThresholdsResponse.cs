using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>Where a spell begins and ends: common practice, no published source. Drying power's threshold stands with each day.</summary>
[Computed]
public sealed record SpellThresholdsResponse
{
    /// <summary>A wet spell begins at this rain in 72 hours.</summary>
    /// <example>25</example>
    public required double WetFromRainInThreeDaysMm { get; init; }

    /// <summary>It also begins at this rain on the leaf.</summary>
    /// <example>0.05</example>
    public required double WetFromRainOnLeafKgPerKg { get; init; }

    /// <summary>It ends when rain in 72 hours is below this …</summary>
    /// <example>12</example>
    public required double WetEndsBelowRainInThreeDaysMm { get; init; }

    /// <summary>… and rain on the leaf below this.</summary>
    /// <example>0.03</example>
    public required double WetEndsBelowRainOnLeafKgPerKg { get; init; }

    /// <summary>A dry windy spell begins below this K_s …</summary>
    /// <example>0.8</example>
    public required double DryBelowWaterStressFraction { get; init; }

    /// <summary>… with less than this rain in 10 days and drying power at its threshold.</summary>
    /// <example>5</example>
    public required double DryBelowRainInTenDaysMm { get; init; }

    /// <summary>It ends above this K_s …</summary>
    /// <example>0.9</example>
    public required double DryEndsAboveWaterStressFraction { get; init; }

    /// <summary>… or at this rain in 10 days …</summary>
    /// <example>20</example>
    public required double DryEndsAtRainInTenDaysMm { get; init; }

    /// <summary>… or when drying power falls below this share of its threshold.</summary>
    /// <example>0.6</example>
    public required double DryEndsBelowPowerShareFraction { get; init; }
}

using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>A coefficient before and after.</summary>
public sealed record LearnedResponse
{
    /// <summary>Name of the field that sets it in a request.</summary>
    /// <example>cuticular_conductance_mm_per_s</example>
    public required string Name { get; init; }

    /// <summary>As in the formulas.</summary>
    /// <example>g_0</example>
    public required string Symbol { get; init; }

    /// <summary>Unit of the five values.</summary>
    /// <example>mm/s</example>
    public required string Unit { get; init; }

    /// <summary>Before any outcome.</summary>
    /// <example>1</example>
    public required double Prior { get; init; }

    /// <summary>In the set in use.</summary>
    /// <example>1</example>
    public required double Before { get; init; }

    /// <summary>In the proposed set.</summary>
    /// <example>1.14</example>
    public required double After { get; init; }

    /// <summary>The true value lies above this with a chance of 95 in 100.</summary>
    /// <example>1.08</example>
    public required double Low { get; init; }

    /// <summary>And below this with the same.</summary>
    /// <example>1.2</example>
    public required double High { get; init; }

    /// <summary>Share of the prior variance that the outcomes removed.</summary>
    /// <example>86.5</example>
    public required double SettledPercent { get; init; }

    /// <summary>The same in a word.</summary>
    /// <example>told</example>
    public required Identifiability Identifiability { get; init; }

    /// <summary>What it means for a maker.</summary>
    /// <example>Your leaf gives up its water 14 % faster than assumed.</example>
    public required string Text { get; init; }
}

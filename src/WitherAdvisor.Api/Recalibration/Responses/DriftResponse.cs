using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>Whether leaf, loft or measuring change with time.</summary>
[Computed]
public sealed record DriftResponse
{
    /// <summary>Change of predicted over actual ready time in a year.</summary>
    /// <example>1.5</example>
    public required double PerYearPercent { get; init; }

    /// <summary>Lower end of its 90 % interval.</summary>
    /// <example>-2</example>
    public required double LowPercent { get; init; }

    /// <summary>Upper end.</summary>
    /// <example>5</example>
    public required double HighPercent { get; init; }

    /// <summary>Stretches of thirty days that had outcomes.</summary>
    /// <example>20</example>
    public required int Months { get; init; }

    /// <summary>The same for people.</summary>
    /// <example>There is no clear drift over time.</example>
    public required string Text { get; init; }
}

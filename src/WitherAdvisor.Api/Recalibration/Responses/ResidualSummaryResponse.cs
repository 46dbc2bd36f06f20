using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>Predicted less actual ready time of outcomes that belong together, by the proposed set.</summary>
[Computed]
public sealed record ResidualSummaryResponse
{
    /// <summary>What they have in common: spell, loading_hour or cultivar.</summary>
    /// <example>spell</example>
    public required string By { get; init; }

    /// <summary>Which.</summary>
    /// <example>wet</example>
    public required string Key { get; init; }

    /// <summary>How many.</summary>
    /// <example>18</example>
    public required int Outcomes { get; init; }

    /// <summary>A quarter lies below.</summary>
    /// <example>-0.4</example>
    public required double LowerQuartileHours { get; init; }

    /// <summary>Half lies below.</summary>
    /// <example>0.1</example>
    public required double MedianHours { get; init; }

    /// <summary>Three quarters lie below.</summary>
    /// <example>0.6</example>
    public required double UpperQuartileHours { get; init; }

    /// <summary>The median by the set in use.</summary>
    /// <example>1.7</example>
    public required double CurrentMedianHours { get; init; }
}

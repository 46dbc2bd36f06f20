using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>Two coefficients that the outcomes cannot separate.</summary>
[Computed]
public sealed record AlikeResponse
{
    /// <summary>Name of the one's field.</summary>
    /// <example>cuticular_conductance_mm_per_s</example>
    public required string First { get; init; }

    /// <summary>Name of the other's.</summary>
    /// <example>airflow_factor_percent</example>
    public required string Second { get; init; }

    /// <summary>−1 to 1; below 0 where more of one does the same as less of the other.</summary>
    /// <example>-0.82</example>
    public required double CorrelationFraction { get; init; }

    /// <summary>The same for people.</summary>
    /// <example>The outcomes cannot separate how freely the leaf gives up its water from how much air the troughs blow: more of one does the same as less of the other.</example>
    public required string Text { get; init; }
}

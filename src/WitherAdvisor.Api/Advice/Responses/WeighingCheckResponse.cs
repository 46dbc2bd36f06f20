using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>When to weigh, what to expect, and what to do if it is not so.</summary>
[Computed]
public sealed record WeighingCheckResponse
{
    /// <summary>From loading.</summary>
    /// <example>4</example>
    public required double Hour { get; init; }

    /// <summary>When.</summary>
    /// <example>2026-03-01T17:00:00+05:30</example>
    public required DateTimeOffset At { get; init; }

    /// <summary>All leaf on the trough.</summary>
    /// <example>905</example>
    public required double ExpectedWeightKg { get; init; }

    /// <summary>At or below this the leaf runs ahead: one case in ten.</summary>
    /// <example>860</example>
    public required double LowWeightKg { get; init; }

    /// <summary>At or above this it lags: one case in ten.</summary>
    /// <example>948</example>
    public required double HighWeightKg { get; init; }

    /// <summary>A marked sample that weighed 10 kg when loaded.</summary>
    /// <example>7.7</example>
    public required double ExpectedSampleWeightKg { get; init; }

    /// <summary>What leaf at the low weight is expected to do.</summary>
    public required CheckActionResponse IfLow { get; init; }

    /// <summary>What leaf at the high weight is expected to do.</summary>
    public required CheckActionResponse IfHigh { get; init; }
}

using WitherAdvisor.Fields.Json;
using WitherAdvisor.Plans;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>A stage of the plan.</summary>
[Computed]
public sealed record StageResponse
{
    /// <summary>Which: loading until the last lot is on, surface drying, main, cooling on ambient air before rolling, or holding of leaf that is ready before it is wanted.</summary>
    /// <example>main</example>
    public required StageKind Stage { get; init; }

    /// <summary>Start, from loading.</summary>
    /// <example>2.5</example>
    public required double FromHour { get; init; }

    /// <summary>End, from loading.</summary>
    /// <example>10</example>
    public required double ToHour { get; init; }

    /// <summary>Start.</summary>
    /// <example>2026-03-01T15:30:00+05:30</example>
    public required DateTimeOffset From { get; init; }

    /// <summary>End.</summary>
    /// <example>2026-03-01T23:00:00+05:30</example>
    public required DateTimeOffset To { get; init; }

    /// <summary>Held under the mesh where the ambient air is not above it; null where no heat is wanted.</summary>
    /// <example>7.2</example>
    public required double? WantedHygrometricDifferenceK { get; init; }

    /// <summary>Share of full airflow while the fan runs.</summary>
    /// <example>100</example>
    public required double FanSharePercent { get; init; }

    /// <summary>Share of the time that the fan runs.</summary>
    /// <example>100</example>
    public required double RunSharePercent { get; init; }
}

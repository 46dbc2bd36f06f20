using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>When to turn the leaf.</summary>
[Computed]
public sealed record TurningResponse
{
    /// <summary>Whole hours between turns; null where they are not even, or no turn is needed before the stop.</summary>
    /// <example>2</example>
    public required int? EveryHours { get; init; }

    /// <summary>Hours from loading.</summary>
    /// <example>[2, 4, 6, 8]</example>
    public required IReadOnlyList<double> AtHours { get; init; }

    /// <summary>The same as times.</summary>
    /// <example>["2026-03-01T15:00:00+05:30"]</example>
    public required IReadOnlyList<DateTimeOffset> At { get; init; }

    /// <summary>What the largest spread between layers would be with one turn more; null where no more fit in.</summary>
    /// <example>2.2</example>
    public required double? LargestSpreadWithOneMorePoints { get; init; }
}

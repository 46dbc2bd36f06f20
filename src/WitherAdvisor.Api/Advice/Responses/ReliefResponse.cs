using WitherAdvisor.Fields.Json;
using WitherAdvisor.Plans.Writing;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>Something that would make a plan possible.</summary>
[Computed]
public sealed record ReliefResponse
{
    /// <summary>What to do.</summary>
    /// <example>spread_thinner</example>
    public required ReliefKind Relief { get; init; }

    /// <summary>Unit of the amount; null where there is none.</summary>
    /// <example>kg/m²</example>
    public required string? Unit { get; init; }

    /// <summary>How much; null where there is none.</summary>
    /// <example>20</example>
    public required double? Amount { get; init; }

    /// <summary>A sentence for people.</summary>
    /// <example>Spread the leaf thinner: 20.0 kg/m².</example>
    public required string Text { get; init; }
}

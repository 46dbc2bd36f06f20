using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>A piece of the moisture of the leaf.</summary>
[Computed]
public sealed record MoistureContributionResponse
{
    /// <summary>Name of the piece.</summary>
    /// <example>drought</example>
    public required string Code { get; init; }

    /// <summary>What it adds.</summary>
    /// <example>-1.2</example>
    public required double AmountPoints { get; init; }
}

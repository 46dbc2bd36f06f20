using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>A piece of the water on the leaf.</summary>
[Computed]
public sealed record SurfaceWaterContributionResponse
{
    /// <summary>Name of the piece.</summary>
    /// <example>rain</example>
    public required string Code { get; init; }

    /// <summary>What it adds.</summary>
    /// <example>0.1</example>
    public required double AmountKgPerKg { get; init; }
}

using WitherAdvisor.Fields.Json;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>Moisture of the leaf without its surface water, wet basis.</summary>
[Computed]
public sealed record MoistureEstimateResponse
{
    /// <summary>Best value.</summary>
    /// <example>77.9</example>
    public required double ValueWetBasisPercent { get; init; }

    /// <summary>How far off it may be.</summary>
    /// <example>0.9</example>
    public required double StandardDeviationPoints { get; init; }

    /// <summary>Where it is from; what was measured wins over the weather.</summary>
    /// <example>from_weather</example>
    public required EstimateOrigin Origin { get; init; }

    /// <summary>What it is made of; they add up to it, and are empty where it was measured.</summary>
    public required IReadOnlyList<MoistureContributionResponse> Contributions { get; init; }
}

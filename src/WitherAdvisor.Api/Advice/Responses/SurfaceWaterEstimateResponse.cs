using WitherAdvisor.Fields.Json;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>Water on the leaf, per kg of leaf without it.</summary>
[Computed]
public sealed record SurfaceWaterEstimateResponse
{
    /// <summary>Best value.</summary>
    /// <example>0.12</example>
    public required double ValueKgPerKg { get; init; }

    /// <summary>How far off it may be.</summary>
    /// <example>0.03</example>
    public required double StandardDeviationKgPerKg { get; init; }

    /// <summary>Where it is from; what was measured wins over feel, feel over the weather.</summary>
    /// <example>from_weather</example>
    public required EstimateOrigin Origin { get; init; }

    /// <summary>What it is made of; they add up to it, and are empty where it was measured.</summary>
    public required IReadOnlyList<SurfaceWaterContributionResponse> Contributions { get; init; }
}

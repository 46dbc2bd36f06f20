namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>What the leaf was taken to be at loading.</summary>
public sealed record LeafResponse
{
    /// <summary>Water on the leaf.</summary>
    public required SurfaceWaterEstimateResponse SurfaceWater { get; init; }

    /// <summary>Water in the leaf, of leaf without its surface water.</summary>
    public required MoistureEstimateResponse TissueMoisture { get; init; }

    /// <summary>What was not known and widened the standard deviations.</summary>
    public required IReadOnlyList<AssumptionResponse> Missing { get; init; }
}

namespace WitherAdvisor.Api.Advice.Answers;

/// <summary>What the leaf was taken to be at loading.</summary>
public sealed record LeafAnswer
{
    /// <summary>Water on the leaf.</summary>
    public required SurfaceWaterEstimateAnswer SurfaceWater { get; init; }

    /// <summary>Water in the leaf, of leaf without its surface water.</summary>
    public required MoistureEstimateAnswer TissueMoisture { get; init; }

    /// <summary>What was not known and widened the standard deviations.</summary>
    public required IReadOnlyList<AssumptionAnswer> Missing { get; init; }
}

using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>A marked sample of the bed, weighed on the way.</summary>
public sealed record SampleWeighingRequest
{
    /// <summary>Hours from loading.</summary>
    /// <example>4</example>
    [Measured(0, OutcomeRequest.LongestHours)]
    public required double Hour { get; init; }

    /// <summary>Its weight over its weight at loading.</summary>
    /// <example>78</example>
    [Measured(10, 120)]
    public required double WeightPercent { get; init; }
}

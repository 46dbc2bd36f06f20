using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>Moisture of samples from three depths of the bed at the end, by the oven. What nobody sampled is left out.</summary>
public sealed record LayersRequest
{
    /// <summary>Next to the mesh.</summary>
    /// <example>58.5</example>
    [Measured(5, 95)]
    public double? BottomMoistureWetBasisPercent { get; init; }

    /// <summary>Half way up.</summary>
    /// <example>60</example>
    [Measured(5, 95)]
    public double? MiddleMoistureWetBasisPercent { get; init; }

    /// <summary>On top.</summary>
    /// <example>61.5</example>
    [Measured(5, 95)]
    public double? TopMoistureWetBasisPercent { get; init; }
}

namespace WitherAdvisor.Api.Recalibration.Responses;

/// <summary>What would teach most of a site, best first.</summary>
public sealed record NextMeasurementsResponse
{
    /// <summary>The set whose open questions these are: the one proposed last; null where the site never was recalibrated.</summary>
    /// <example>learned-1</example>
    public required string? Set { get; init; }

    /// <summary>Each with what it would teach.</summary>
    public required IReadOnlyList<NextMeasurementResponse> Measurements { get; init; }
}

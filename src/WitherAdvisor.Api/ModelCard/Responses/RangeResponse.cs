namespace WitherAdvisor.Api.ModelCard.Responses;

/// <summary>The range that a number of a request has to lie in, ends included.</summary>
public sealed record RangeResponse
{
    /// <summary>Its JSON path in a request for advice.</summary>
    /// <example>site.elevation_m</example>
    public required string Field { get; init; }

    /// <summary>Lowest value taken.</summary>
    /// <example>-430</example>
    public required double Least { get; init; }

    /// <summary>Highest value taken.</summary>
    /// <example>5000</example>
    public required double Most { get; init; }

    /// <summary>Unit of both; null for a bare number.</summary>
    /// <example>m</example>
    public required string? Unit { get; init; }
}

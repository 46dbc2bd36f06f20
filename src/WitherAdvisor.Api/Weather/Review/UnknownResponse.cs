namespace WitherAdvisor.Api.Weather.Review;

/// <summary>Why a value is null.</summary>
public sealed record UnknownResponse
{
    /// <summary>Its name.</summary>
    /// <example>rain_mm</example>
    public required string Field { get; init; }

    /// <summary>Why, as the end of a sentence.</summary>
    /// <example>neither observed nor forecast</example>
    public required string Reason { get; init; }
}

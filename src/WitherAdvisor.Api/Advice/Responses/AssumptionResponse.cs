namespace WitherAdvisor.Api.Advice.Responses;

/// <summary>Something not known, and what was taken in its place.</summary>
public sealed record AssumptionResponse
{
    /// <summary>Its name.</summary>
    /// <example>no_forecast</example>
    public required string Code { get; init; }

    /// <summary>A sentence for people.</summary>
    /// <example>No forecast was given: the last air read is held all night.</example>
    public required string Text { get; init; }
}

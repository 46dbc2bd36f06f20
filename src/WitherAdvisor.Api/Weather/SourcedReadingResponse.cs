namespace WitherAdvisor.Api.Weather;

/// <summary>The best that is known of one instant, from all sources, value by value.</summary>
public sealed record SourcedReadingResponse
{
    /// <summary>Every known value; null is unknown.</summary>
    public required ReadingRequest Reading { get; init; }

    /// <summary>Where each is from.</summary>
    public required ReadingSourcesResponse Sources { get; init; }
}

namespace WitherAdvisor.Api.Weather;

/// <summary>The best that is known of one instant, from all sources, value by value.</summary>
public sealed record SourcedReadingAnswer
{
    /// <summary>Every known value; null is unknown.</summary>
    public required ReadingInput Reading { get; init; }

    /// <summary>Where each is from.</summary>
    public required ReadingSourcesAnswer Sources { get; init; }
}

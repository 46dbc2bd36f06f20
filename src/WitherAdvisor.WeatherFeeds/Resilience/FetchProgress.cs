using Polly;

namespace WitherAdvisor.WeatherFeeds.Resilience;

/// <summary>What the strategies of one fetch tell each other.</summary>
/// <param name="Deadline">When the total limit strikes.</param>
internal sealed record FetchProgress(DateTimeOffset Deadline)
{
    private static readonly ResiliencePropertyKey<FetchProgress> Property = new("weather-feed-progress");

    /// <summary>Why the last try gave nothing; a time limit or an open breaker is only where it ended.</summary>
    public FeedAnswer.Refused? LastFault { get; set; }

    public static FetchProgress Of(ResilienceContext context) => context.Properties.GetValue(Property, new(DateTimeOffset.MinValue));

    public void PutInto(ResilienceContext context) => context.Properties.Set(Property, this);
}

namespace WitherAdvisor.WeatherFeeds.Configuration;

/// <summary>The operator's feeds, as written in the configuration.</summary>
public sealed class WeatherFeedsOptions
{
    public const string Section = "WeatherFeeds";

    /// <summary>By name: lower-case letters, digits, "-" and "_", at most 40.</summary>
    public IDictionary<string, FeedOptions> Feeds { get; } = new Dictionary<string, FeedOptions>(StringComparer.Ordinal);
}

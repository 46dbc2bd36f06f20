namespace WitherAdvisor.WeatherFeeds;

/// <summary>State of a feed's circuit breaker.</summary>
public enum FeedBreaker
{
    /// <summary>The feed is asked.</summary>
    Closed,

    /// <summary>The feed failed again and again: it is left in peace for a while.</summary>
    Open,

    /// <summary>The next fetch tries whether it is well again.</summary>
    Trying,
}

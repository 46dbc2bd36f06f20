namespace WitherAdvisor.WeatherFeeds;

/// <summary>Which of a feed's two hosts.</summary>
public enum FeedSource
{
    /// <summary>The last days and the coming ones.</summary>
    Forecast,

    /// <summary>Long ago.</summary>
    Archive,
}

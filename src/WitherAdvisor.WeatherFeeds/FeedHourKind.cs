namespace WitherAdvisor.WeatherFeeds;

/// <summary>What a feed's value of an hour is.</summary>
public enum FeedHourKind
{
    /// <summary>The model's picture of what has been. Not an observation, and it may change in later fetches.</summary>
    Analysis,

    /// <summary>The hour that was running: its rain and radiation are partly forecast.</summary>
    PartForecast,

    /// <summary>Forecast.</summary>
    Forecast,
}

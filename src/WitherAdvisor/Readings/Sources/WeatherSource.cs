namespace WitherAdvisor.Readings.Sources;

/// <summary>Where a reading is from, best first: where several tell of one instant, the first that knows a value gives it.</summary>
public enum WeatherSource
{
    /// <summary>Read at the site, by hand or by instrument.</summary>
    Observed,

    /// <summary>A feed's picture of what has been. No one read it, and it may change in later fetches.</summary>
    FeedAnalysis,

    /// <summary>Forecast, and given to the service by a caller.</summary>
    CallerForecast,

    /// <summary>Forecast by a feed.</summary>
    FeedForecast,
}

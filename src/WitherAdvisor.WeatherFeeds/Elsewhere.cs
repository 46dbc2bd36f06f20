namespace WitherAdvisor.WeatherFeeds;

/// <summary>Where a feed points that sends its caller away.</summary>
public enum Elsewhere
{
    /// <summary>It does not say.</summary>
    Nowhere,

    /// <summary>Another path of the same host.</summary>
    Path,

    /// <summary>A host by name.</summary>
    Host,
}

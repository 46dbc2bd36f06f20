namespace WitherAdvisor.WeatherFeeds;

/// <summary>The hours wanted for a site. Two queries that are equal share one fetch.</summary>
public sealed record FeedQuery
{
    /// <summary>For a site, as it stands on the map.</summary>
    /// <param name="siteId">Whose weather.</param>
    /// <param name="latitudeDeg">Degrees north, −90 to 90.</param>
    /// <param name="longitudeDeg">Degrees east, −180 to 180.</param>
    /// <param name="elevationM">Metres above sea level, −500 to 9,000. The feed is asked to bring its values to it.</param>
    /// <param name="span">Which days.</param>
    /// <exception cref="ArgumentOutOfRangeException">A place that is not on earth.</exception>
    public FeedQuery(string siteId, double latitudeDeg, double longitudeDeg, double elevationM, FeedSpan span)
    {
        SiteId = siteId;
        LatitudeDeg = Within(latitudeDeg, -90, 90, nameof(latitudeDeg));
        LongitudeDeg = Within(longitudeDeg, -180, 180, nameof(longitudeDeg));
        ElevationM = Within(elevationM, -500, 9_000, nameof(elevationM));
        Span = span;
    }

    public string SiteId { get; }

    public double LatitudeDeg { get; }

    public double LongitudeDeg { get; }

    public double ElevationM { get; }

    public FeedSpan Span { get; }

    // The negation also catches what is not a number.
    private static double Within(double value, double low, double high, string name) => !(value >= low && value <= high)
        ? throw new ArgumentOutOfRangeException(name, value, $"must be from {low} to {high}")
        : value;
}

namespace WitherAdvisor.Api.Feeds.Responses;

/// <summary>The grid cell whose weather a feed gave; it is not the site.</summary>
public sealed record FeedCellResponse
{
    /// <summary>Degrees north.</summary>
    /// <example>7</example>
    public required double LatitudeDeg { get; init; }

    /// <summary>Degrees east.</summary>
    /// <example>80.75</example>
    public required double LongitudeDeg { get; init; }

    /// <summary>Metres above sea level that the feed made its values for; null where it does not say.</summary>
    /// <example>1450</example>
    public required double? ElevationM { get; init; }
}

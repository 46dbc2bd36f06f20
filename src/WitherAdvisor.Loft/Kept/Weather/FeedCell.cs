namespace WitherAdvisor.Loft.Kept.Weather;

/// <summary>The grid cell whose weather a feed gave; it is not the site.</summary>
/// <param name="LatitudeDeg">Degrees north.</param>
/// <param name="LongitudeDeg">Degrees east.</param>
/// <param name="ElevationM">Metres above sea level that the values were made for; null where the feed does not say.</param>
public sealed record FeedCell(double LatitudeDeg, double LongitudeDeg, double? ElevationM);

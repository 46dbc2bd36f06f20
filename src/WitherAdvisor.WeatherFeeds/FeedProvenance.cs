namespace WitherAdvisor.WeatherFeeds;

/// <summary>Where and when a series comes from. A feed does not tell its model run: the time of fetching stands for it.</summary>
/// <param name="FeedName">As the operator named it.</param>
/// <param name="Attribution">The line that has to be shown beside the numbers.</param>
/// <param name="Source">Which of the feed's two hosts answered.</param>
/// <param name="FetchedAt">When the answer came, by our clock.</param>
/// <param name="AsOf">
/// When the answer was made: the same, or earlier where the answer's own date says so (a cache stands between, or a clock is wrong).
/// </param>
/// <param name="CellLatitudeDeg">Degrees north of the grid cell that answered; it is not the site.</param>
/// <param name="CellLongitudeDeg">Degrees east of the grid cell.</param>
/// <param name="CellElevationM">Elevation that the feed's values were made for, m; null where it does not say.</param>
/// <param name="ReadingsElevationM">Elevation that the readings are for, m; null where the feed does not say and nothing could be corrected.</param>
public sealed record FeedProvenance(
    string FeedName,
    string Attribution,
    FeedSource Source,
    DateTimeOffset FetchedAt,
    DateTimeOffset AsOf,
    double CellLatitudeDeg,
    double CellLongitudeDeg,
    double? CellElevationM,
    double? ReadingsElevationM)
{
    /// <summary>Whether the value labelled with a time has been or is forecast.</summary>
    public FeedHourKind KindOf(DateTimeOffset time) =>
        time <= AsOf ? FeedHourKind.Analysis
        : time - AsOf < TimeSpan.FromHours(1) ? FeedHourKind.PartForecast
        : FeedHourKind.Forecast;
}

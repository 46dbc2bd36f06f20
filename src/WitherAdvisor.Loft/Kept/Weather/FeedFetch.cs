using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Loft.Kept.Weather;

/// <summary>What came of asking a feed once for a site's weather.</summary>
/// <param name="Feed">As the operator named it.</param>
/// <param name="FetchedAt">When.</param>
/// <param name="Refusal">Why there is no weather; null where there is.</param>
/// <param name="HoursGot">Hours of weather in the answer.</param>
/// <param name="NewestAnalysed">The newest hour that was not forecast; null where there is none.</param>
/// <param name="Cell">The grid cell that answered; null where none did.</param>
/// <param name="Notes">What was missing, corrected or left out.</param>
public sealed record FeedFetch(
    string SiteId,
    string Feed,
    DateTimeOffset FetchedAt,
    FeedFault? Refusal,
    int HoursGot,
    DateTimeOffset? NewestAnalysed,
    FeedCell? Cell,
    IReadOnlyList<FeedNote> Notes)
{
    /// <summary>Whether it gave weather.</summary>
    public bool IsGood => Refusal is null;
}

using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Loft.FeedRefresh;

/// <summary>What came of fetching a site's weather.</summary>
public abstract record RefreshOutcome
{
    /// <summary>Weather, and it is kept.</summary>
    /// <param name="AnalysedHours">Hours that the feed takes to have been.</param>
    /// <param name="ForecastHours">Hours that it forecasts.</param>
    /// <param name="From">The first of them; null where there is none.</param>
    /// <param name="To">The last.</param>
    /// <param name="Notes">What was missing, corrected or left out.</param>
    /// <param name="Provenance">Where and when they come from.</param>
    public sealed record Taken(
        int AnalysedHours,
        int ForecastHours,
        DateTimeOffset? From,
        DateTimeOffset? To,
        IReadOnlyList<FeedNote> Notes,
        FeedProvenance Provenance) : RefreshOutcome;

    /// <summary>None.</summary>
    public sealed record Refused(FeedAnswer.Refused Why) : RefreshOutcome;
}

using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Loft.FeedRefresh;

/// <summary>Which days to ask a feed for.</summary>
public static class RefreshSpan
{
    /// <summary>A model's picture of the last days still changes as reports come in.</summary>
    public const int ShortPastDays = 3;

    /// <summary>Today and two more by UTC: never less than two days ahead, and no wither is longer.</summary>
    public const int ForecastDays = 3;

    /// <summary>
    /// In whole days, so that all who ask for a site on one day ask the same and share a fetch.
    /// </summary>
    /// <param name="newestAnalysed">The newest hour of the past that the feed has given; null where it has given none.</param>
    /// <param name="mostPastDays">The most that the feed gives; all of them at first, since soil water remembers months.</param>
    /// <param name="now">By our clock.</param>
    public static FeedSpan Since(DateTimeOffset? newestAnalysed, int mostPastDays, DateTimeOffset now)
    {
        int missed = newestAnalysed is { } newest ? Day(now) - Day(newest) : mostPastDays;
        return new FeedSpan.Around(Math.Clamp(missed + 1, Math.Min(ShortPastDays, mostPastDays), mostPastDays), ForecastDays);
    }

    private static int Day(DateTimeOffset time) => DateOnly.FromDateTime(time.UtcDateTime).DayNumber;
}

namespace WitherAdvisor.WeatherFeeds;

/// <summary>One configured feed of hourly weather.</summary>
public interface IWeatherFeed
{
    /// <summary>As the operator named it.</summary>
    string Name { get; }

    /// <summary>The line that has to be shown beside its numbers.</summary>
    string Attribution { get; }

    /// <summary>The most past days that it gives.</summary>
    int PastDays { get; }

    /// <summary>How it has been doing.</summary>
    FeedHealth Health { get; }

    /// <summary>
    /// Fetches the hours asked for, or says why not. Whatever the network or the feed does ends in an answer within the
    /// feed's total limit; it throws only when <paramref name="cancel"/> ends the wait or the feed is disposed.
    /// Callers who ask the same at the same time share one request, and one who leaves does not take it from the others.
    /// </summary>
    Task<FeedAnswer> Fetch(FeedQuery query, CancellationToken cancel = default);
}

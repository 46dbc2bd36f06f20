namespace WitherAdvisor.Loft.Kept.Weather;

/// <summary>What came of asking feeds. Times come back as the same instants to the millisecond, with offset zero.</summary>
public interface IFeedLog
{
    /// <summary>Days that a fetch is remembered. Of each feed of a site the last good one is remembered for ever.</summary>
    const int DaysKept = 90;

    /// <summary>
    /// Keeps what came of a fetch; another of the same site, feed and millisecond replaces it. Those of the site that are
    /// older by more than <see cref="DaysKept"/> are forgotten.
    /// </summary>
    /// <exception cref="ParentNotFoundException">No such site.</exception>
    Task Add(FeedFetch fetch, CancellationToken cancel = default);

    /// <summary>The last fetch, good or refused; null where there was none.</summary>
    Task<FeedFetch?> Last(string siteId, string feed, CancellationToken cancel = default);

    /// <summary>The last fetch that gave weather; null where there was none.</summary>
    Task<FeedFetch?> LastGood(string siteId, string feed, CancellationToken cancel = default);
}

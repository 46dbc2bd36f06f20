using System.Collections.Concurrent;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Loft.FeedRefresh;

/// <summary>Remembers when the weather of each site is to be fetched next.</summary>
public sealed class DueSites(TimeSpan every)
{
    /// <summary>A network that was away for a moment should not cost an hour.</summary>
    public static readonly TimeSpan AfterRefusal = TimeSpan.FromMinutes(10);

    private readonly ConcurrentDictionary<string, (StoredSite Site, DateTimeOffset At)> next = new(StringComparer.Ordinal);

    /// <summary>
    /// Whether the time has come. For a site not seen before, with another feed or in another place it has, unless its
    /// feed gave weather a moment ago: a service that starts again and again must not ask as often.
    /// </summary>
    public bool IsDue(StoredSite site, DateTimeOffset? lastGoodAt, DateTimeOffset now)
    {
        if (!next.TryGetValue(site.Id, out var planned) || planned.Site.Feed != site.Feed || !planned.Site.IsWhere(site))
        {
            planned = (site, lastGoodAt is { } good ? good + Pace(site.Id) : now);
            next[site.Id] = planned;
        }

        return planned.At <= now;
    }

    /// <summary>Until it is known what came of it: where nothing ever is, as after a refusal.</summary>
    public void Begin(StoredSite site, DateTimeOffset now) => next[site.Id] = (site, now + AfterRefusal);

    /// <summary>From when it was begun, so that the pace does not slip by the time that fetches take.</summary>
    public void End(StoredSite site, RefreshOutcome outcome, DateTimeOffset begunAt) =>
        next[site.Id] = (site, outcome is RefreshOutcome.Refused refused ? Again(refused.Why, begunAt) : begunAt + Pace(site.Id));

    private static DateTimeOffset Again(FeedAnswer.Refused why, DateTimeOffset begunAt)
    {
        DateTimeOffset soonest = begunAt + AfterRefusal;
        return why.RetryAfter > soonest ? why.RetryAfter.Value : soonest;
    }

    /// <summary>Up to a tenth sooner, each site at its own pace, so that sites that began together do not stay together.</summary>
    private TimeSpan Pace(string site) => every * (1 - 0.1 * Share(site));

    /// <summary>0 to 1, always the same for a site: the FNV-1a hash (Fowler, Noll and Vo) of its id.</summary>
    private static double Share(string site) =>
        site.Aggregate(2_166_136_261u, (hash, letter) => unchecked((hash ^ letter) * 16_777_619u)) / (double)uint.MaxValue;
}

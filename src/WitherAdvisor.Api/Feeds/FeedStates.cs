using WitherAdvisor.Api.Feeds.Answers;
using WitherAdvisor.Store;
using WitherAdvisor.WeatherFeeds;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Units;
using WitherAdvisor.Words.Weather;

namespace WitherAdvisor.Api.Feeds;

/// <summary>Tells how it stands with the feed of a site, from what is kept: no feed is asked for it.</summary>
internal sealed class FeedStates(IWeatherFeeds feeds, ISiteStore sites, IFeedLog log, TimeProvider clock)
{
    /// <summary>Null where the site has no feed.</summary>
    public async Task<FeedStateAnswer?> Of(string siteId, CancellationToken cancel) =>
        await sites.FindSite(siteId, cancel) is { Feed: { } feed } site ? await Of(site, feed, cancel) : null;

    public async Task<FeedStateAnswer> Of(StoredSite site, string feed, CancellationToken cancel)
    {
        FeedFetch? last = await log.Last(site.Id, feed, cancel);
        FeedFetch? good = await log.LastGood(site.Id, feed, cancel);
        string? attribution = feeds.Find(feed)?.Attribution;
        return new()
        {
            Feed = feed,
            Attribution = attribution,
            LastGoodAt = good?.FetchedAt,
            NewestAnalysedAt = good?.NewestAnalysed,
            AgeHours = (clock.GetUtcNow() - good?.NewestAnalysed)?.TotalHours,
            Notes = good?.Notes ?? [],
            RefusedAt = last is { IsGood: false } ? last.FetchedAt : null,
            Refusal = last?.Refusal,
            Text = FeedWording.State(
                Wordbook.English, feed, attribution, last is null ? null : new FeedAsked(last.FetchedAt, last.Refusal), good?.FetchedAt, new WallClock(site.TimeZone)),
        };
    }
}

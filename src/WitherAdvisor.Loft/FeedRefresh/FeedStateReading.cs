using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Loft.FeedRefresh;

/// <summary>Tells how it stands with the feed of a site, from what is kept: no feed is asked for it.</summary>
public sealed class FeedStateReading(IWeatherFeeds feeds, IFeedLog log)
{
    public async Task<FeedState> Of(string siteId, string feed, CancellationToken cancel) => new(
        feed, feeds.Find(feed)?.Attribution, await log.Last(siteId, feed, cancel), await log.LastGood(siteId, feed, cancel));
}

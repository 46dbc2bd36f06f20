using WitherAdvisor.Api.Feeds.Answers;
using WitherAdvisor.Loft.FeedRefresh;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Store;
using WitherAdvisor.WeatherFeeds;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Feeds;
using WitherAdvisor.Words.Units;
using WitherAdvisor.Words.Weather;

namespace WitherAdvisor.Api.Feeds;

/// <summary>Tells how it stands with the feed of a site, from what is kept: no feed is asked for it.</summary>
internal sealed class FeedStates(FeedStateReading states, ISiteStore sites, TimeProvider clock)
{
    /// <summary>Null where the site has no feed.</summary>
    public async Task<FeedStateAnswer?> Of(string siteId, CancellationToken cancel) =>
        await sites.FindSite(siteId, cancel) is { Feed: { } feed } site ? await Of(site, feed, cancel) : null;

    public async Task<FeedStateAnswer> Of(StoredSite site, string feed, CancellationToken cancel)
    {
        (_, string? attribution, FeedFetch? last, FeedFetch? good) = await states.Of(site.Id, feed, cancel);
        return new()
        {
            Feed = feed,
            Attribution = attribution,
            LastGoodAt = good?.FetchedAt,
            NewestAnalysedAt = good?.NewestAnalysed,
            AgeHours = (clock.GetUtcNow() - good?.NewestAnalysed)?.TotalHours,
            Notes = [.. (good?.Notes ?? []).Select(FeedNoteWording.Sentence)],
            RefusedAt = last is { IsGood: false } ? last.FetchedAt : null,
            Refusal = last?.Refusal is { } fault ? FeedFaultWording.Sentence(fault) : null,
            Text = FeedWording.State(
                Wordbook.English, feed, attribution,
                last is null ? null : new FeedAsked(last.FetchedAt, last.Refusal is { } refusal ? FeedFaultWording.Sentence(refusal) : null),
                good?.FetchedAt, new WallClock(site.TimeZone)),
        };
    }
}

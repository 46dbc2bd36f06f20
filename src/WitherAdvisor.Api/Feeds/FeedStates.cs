using WitherAdvisor.Api.Feeds.Responses;
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
    public async Task<FeedStateResponse?> Of(string siteId, CancellationToken cancel) =>
        await sites.FindSite(siteId, cancel) is { Feed: { } feed } site ? await Of(site, feed, cancel) : null;

    public async Task<FeedStateResponse> Of(StoredSite site, string feed, CancellationToken cancel)
    {
        (_, string? attribution, FeedFetch? last, FeedFetch? good) = await states.Of(site.Id, feed, cancel);
        return new()
        {
            Feed = feed,
            Attribution = attribution,
            LastGoodAt = good?.FetchedAt,
            NewestAnalysedAt = good?.NewestAnalysed,
            AgeHours = (clock.GetUtcNow() - good?.NewestAnalysed)?.TotalHours,
            Notes = [.. (good?.Notes ?? []).Select(note => FeedNoteWording.Sentence(Wordbook.English, note))],
            RefusedAt = last is { IsGood: false } ? last.FetchedAt : null,
            Refusal = last?.Refusal is { } fault ? FeedFaultWording.Sentence(Wordbook.English, fault) : null,
            Text = Text(Wordbook.English, feed, attribution, last, good, site),
        };
    }

    /// <summary>The same in sentences for a page; null where the site has no feed.</summary>
    public async Task<string?> Told(string siteId, Wordbook words, CancellationToken cancel)
    {
        if (await sites.FindSite(siteId, cancel) is not { Feed: { } feed } site)
        {
            return null;
        }

        (_, string? attribution, FeedFetch? last, FeedFetch? good) = await states.Of(site.Id, feed, cancel);
        return Text(words, feed, attribution, last, good, site);
    }

    private static string Text(Wordbook words, string feed, string? attribution, FeedFetch? last, FeedFetch? good, StoredSite site) => FeedWording.State(
        words, feed, attribution,
        last is null ? null : new FeedAsked(last.FetchedAt, last.Refusal is { } refusal ? FeedFaultWording.Sentence(words, refusal) : null),
        good?.FetchedAt, new WallClock(site.TimeZone, words));
}

using System.Collections.Concurrent;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Loft;
using WitherAdvisor.Readings;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Loft.FeedRefresh;

/// <summary>Fetches a site's weather from its feed, keeps it, and keeps what came of it. One fetch of a site at a time.</summary>
/// <param name="stopping">When whatever runs this ends.</param>
public sealed class SiteRefresh(
    ISiteStore sites, IWeatherStore weather, IFeedLog log, TimeProvider clock, CancellationToken stopping)
{
    private static readonly FeedAnswer.Refused Moved = new(RefusalReason.WrongPlace, new FeedFault.SiteMoved());

    private readonly ConcurrentDictionary<(string Site, string Feed), Lazy<Task<RefreshOutcome>>> inFlight = new();

    /// <summary>Joins the fetch that runs for the site or starts one. Who leaves does not end it for the others.</summary>
    public Task<RefreshOutcome> Of(StoredSite site, IWeatherFeed feed, CancellationToken cancel) => inFlight
        .GetOrAdd((site.Id, feed.Name), key => new(() => Once(key, site, feed)))
        .Value.WaitAsync(cancel);

    private async Task<RefreshOutcome> Once((string Site, string Feed) key, StoredSite site, IWeatherFeed feed)
    {
        try
        {
            return await Ask(site, feed);
        }
        finally
        {
            inFlight.TryRemove(key, out _);
        }
    }

    private async Task<RefreshOutcome> Ask(StoredSite site, IWeatherFeed feed)
    {
        FeedFetch? lastGood = await log.LastGood(site.Id, feed.Name, stopping);
        FeedSpan span = RefreshSpan.Since(lastGood?.NewestAnalysed, feed.PastDays, clock.GetUtcNow());
        // A feed that wants to be left in peace is not asked: it only says once more what it said.
        bool isAsked = feed.Health.RetryAfter is null;
        FeedAnswer answer = await feed.Fetch(
            new(site.Id, site.Site.LatitudeDeg, site.Site.LongitudeDeg, site.Site.ElevationM, span), stopping);
        if (await sites.FindSite(site.Id, stopping) is { } now && !site.IsWhere(now))
        {
            return new RefreshOutcome.Refused(Moved);
        }

        return answer switch
        {
            FeedAnswer.Series series => await Keep(site.Id, series, stopping),
            FeedAnswer.Refused refused => await Keep(site.Id, feed.Name, refused, isAsked, stopping),
            _ => throw new InvalidOperationException("A feed's answer is a series or a refusal."),
        };
    }

    private async Task<RefreshOutcome> Keep(string site, FeedAnswer.Series series, CancellationToken cancel)
    {
        FeedProvenance from = series.Provenance;
        AllowedReadings allowed = new(series.Readings);
        List<WeatherReading> all = [.. allowed.Readings];
        List<WeatherReading> analysed = all.FindAll(reading => from.KindOf(reading.Time) == FeedHourKind.Analysis);
        List<WeatherReading> forecast = all.FindAll(reading => from.KindOf(reading.Time) != FeedHourKind.Analysis);
        List<FeedNote> notes = [.. series.Notes, .. allowed.Notes];
        // An answer out of a cache on the way is as old as it says, and must not replace a newer one.
        await weather.SaveFromFeed(site, from.FeedName, analysed, forecast, from.AsOf, cancel);
        await log.Add(new(
            site, from.FeedName, from.FetchedAt, Refusal: null, all.Count, analysed.LastOrDefault()?.Time,
            new(from.CellLatitudeDeg, from.CellLongitudeDeg, from.CellElevationM), notes), cancel);
        return new RefreshOutcome.Taken(
            analysed.Count, forecast.Count, all.FirstOrDefault()?.Time, all.LastOrDefault()?.Time, notes, from);
    }

    private async Task<RefreshOutcome> Keep(
        string site, string feed, FeedAnswer.Refused refused, bool isNews, CancellationToken cancel)
    {
        if (isNews)
        {
            await log.Add(new(site, feed, clock.NowInMilliseconds(), refused.Fault, 0, NewestAnalysed: null, Cell: null, []), cancel);
        }

        return new RefreshOutcome.Refused(refused);
    }
}

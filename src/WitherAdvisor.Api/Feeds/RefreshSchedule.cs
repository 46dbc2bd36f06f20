using Microsoft.Extensions.Options;
using WitherAdvisor.Loft.FeedRefresh;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Api.Feeds;

/// <summary>
/// Fetches the weather of every site with a feed, soon after the start, soon after a site got its feed, and from then on
/// as often as configured. Nothing that goes wrong here ends the service: advice lives on what is kept.
/// </summary>
internal sealed class RefreshSchedule(
    IWeatherFeeds feeds, ISiteStore sites, IFeedLog log, SiteRefresh refresh, IOptions<RefreshOptions> options,
    TimeProvider clock, ILogger<RefreshSchedule> logger) : BackgroundService
{
    /// <summary>Looking costs a read of the sites; no other part has to say that a site was changed.</summary>
    public static readonly TimeSpan LookEvery = TimeSpan.FromSeconds(10);

    private readonly PeriodicTimer looks = new(LookEvery, clock);
    private readonly DueSites due = new(options.Value.Every);

    public override void Dispose()
    {
        looks.Dispose();
        base.Dispose();
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        if (feeds.All.Count == 0 || !options.Value.OnSchedule)
        {
            return;
        }

        while (await looks.WaitForNextTickAsync(stoppingToken))
        {
            await Try("look for sites whose weather is due", () => FetchWhatIsDue(stoppingToken), stoppingToken);
        }
    }

    private async Task FetchWhatIsDue(CancellationToken stopping)
    {
        IReadOnlyList<StoredSite> all = await sites.ListSites(stopping);
        // Sites of one feed come one after the other, as a feed takes one question at a time.
        await Task.WhenAll(all.GroupBy(site => site.Feed).Select(async group =>
        {
            if (group.Key is { } name && feeds.Find(name) is { } feed)
            {
                foreach (StoredSite site in group)
                {
                    await Try($"fetch the weather of site {site.Id}", () => FetchIfDue(site, feed, stopping), stopping);
                }
            }
        }));
    }

    private async Task FetchIfDue(StoredSite site, IWeatherFeed feed, CancellationToken stopping)
    {
        FeedFetch? lastGood = await log.LastGood(site.Id, feed.Name, stopping);
        DateTimeOffset now = clock.GetUtcNow();
        if (due.IsDue(site, lastGood?.FetchedAt, now))
        {
            due.Begin(site, now);
            due.End(site, await refresh.Of(site, feed, stopping), now);
        }
    }

    // Whatever fails is tried again at the next look; only the end of the service ends the looking.
    private async Task Try(string what, Func<Task> act, CancellationToken stopping)
    {
        try
        {
            await act();
        }
        catch (Exception failure) when (!stopping.IsCancellationRequested)
        {
            logger.LogError(failure, "Could not {What}", what);
        }
    }
}

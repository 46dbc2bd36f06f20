using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.Options;
using WitherAdvisor.Api.Feeds.Responses;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.FeedRefresh;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Api.Feeds;

/// <summary>Routes of weather feeds.</summary>
internal static class FeedEndpoints
{
    public static void MapFeeds(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder feeds = v1.MapGroup("").WithTags("Feeds");
        feeds.MapGet("feeds", ListFeeds);
        feeds.MapPost("sites/{site}/weather/refresh", PostRefresh).Produces<ProblemResponse>(StatusCodes.Status409Conflict);
    }

    /// <summary>The feeds that a site may name, how each is doing, and how often weather is fetched.</summary>
    private static Ok<FeedsResponse> ListFeeds(IWeatherFeeds feeds, IOptions<RefreshOptions> options) => TypedResults.Ok(new FeedsResponse
    {
        RefreshEveryHours = options.Value.Every.TotalHours,
        Feeds = [.. feeds.All.Select(FeedMapping.ToResponse)],
    });

    /// <summary>
    /// Fetches the weather of a site from its feed now, without waiting for the schedule. The first fetch asks for the
    /// last 92 days, later ones for what has been missed since. A refusal by the feed is reported with status 200.
    /// </summary>
    private static async Task<Results<Ok<RefreshResponse>, ProblemResult>> PostRefresh(
        string site, ISiteStore sites, IWeatherFeeds feeds, SiteRefresh refresh, FeedStates states, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return Problem.Unknown("site", site);
        }

        if (found.Feed is not { } name)
        {
            return Problem.Conflict("site-without-feed", "The site has no feed.",
                $"Site '{site}' has no feed to fetch weather from. {Configured(feeds)}");
        }

        if (feeds.Find(name) is not { } feed)
        {
            return Problem.Conflict("feed-not-configured", "The site's feed is no longer configured.",
                $"Site '{site}' uses the feed '{name}', which is no longer configured. {Configured(feeds)}");
        }

        RefreshOutcome outcome = await refresh.Of(found, feed, cancel);
        return TypedResults.Ok(FeedMapping.ToResponse(outcome, await states.Of(found, name, cancel)));
    }

    private static string Configured(IWeatherFeeds feeds) => feeds.All.Count == 0
        ? "No feed is configured."
        : $"Configured: {string.Join(", ", feeds.All.Select(feed => feed.Name))}.";
}

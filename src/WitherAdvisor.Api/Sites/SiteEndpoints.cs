using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Api.Sites;

/// <summary>Routes of sites.</summary>
internal static class SiteEndpoints
{
    public static void MapSites(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder sites = v1.MapGroup("/sites").WithTags("Sites");
        sites.MapGet("", ListSites);
        sites.MapGet("{site}", GetSite);
        sites.MapPut("{site}", PutSite);
    }

    /// <summary>All sites, by id.</summary>
    private static async Task<Ok<List<SiteResponse>>> ListSites(ISiteStore store, CancellationToken cancel)
    {
        IReadOnlyList<StoredSite> sites = await store.ListSites(cancel);
        return TypedResults.Ok(sites.Select(SiteMapping.ToResponse).ToList());
    }

    /// <summary>One site, with every setting stated.</summary>
    private static async Task<Results<Ok<SiteResponse>, ProblemResult>> GetSite(
        string site, ISiteStore store, CancellationToken cancel) =>
        await store.FindSite(site, cancel) is { } found
            ? TypedResults.Ok(SiteMapping.ToResponse(found))
            : Problem.Unknown("site", site);

    /// <summary>
    /// Creates or replaces a site. Advice already given keeps the settings that it was made with. Where the site has
    /// moved, the weather of its feed is dropped and fetched again.
    /// </summary>
    private static async Task<Results<Ok<SiteResponse>, Created<SiteResponse>, ProblemResult>> PutSite(
        string site, Body<KeptSiteRequest> body, ISiteStore store, IWeatherStore weather, IWeatherFeeds feeds, CancellationToken cancel)
    {
        if ((NameInPath.Refuse("site", site) ?? SiteFeed.Refuse(body.Value.Feed, feeds)) is { } refusal)
        {
            return refusal;
        }

        StoredSite? before = await store.FindSite(site, cancel);
        StoredSite stored = SiteMapping.ToStored(site, body.Value, body.Value.Feed);
        await store.PutSite(stored, cancel);
        if (before is not null && !before.IsWhere(stored))
        {
            await weather.ForgetFeeds(site, cancel);
        }

        SiteResponse answer = SiteMapping.ToResponse(stored);
        return before is null ? TypedResults.Created($"/v1/sites/{site}", answer) : TypedResults.Ok(answer);
    }
}

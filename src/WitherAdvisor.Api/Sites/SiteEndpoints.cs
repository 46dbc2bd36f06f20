using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Store;

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
    private static async Task<Ok<List<SiteAnswer>>> ListSites(ISiteStore store, CancellationToken cancel)
    {
        IReadOnlyList<StoredSite> sites = await store.ListSites(cancel);
        return TypedResults.Ok(sites.Select(SiteMapping.ToAnswer).ToList());
    }

    /// <summary>One site, with every setting stated.</summary>
    private static async Task<Results<Ok<SiteAnswer>, ProblemResult>> GetSite(
        string site, ISiteStore store, CancellationToken cancel) =>
        await store.FindSite(site, cancel) is { } found
            ? TypedResults.Ok(SiteMapping.ToAnswer(found))
            : Problem.Unknown("site", site);

    /// <summary>Creates or replaces a site. Advice already given keeps the settings that it was made with.</summary>
    private static async Task<Results<Ok<SiteAnswer>, Created<SiteAnswer>, ProblemResult>> PutSite(
        string site, Body<SiteInput> body, ISiteStore store, CancellationToken cancel)
    {
        if (Slug.Refuse("site", site) is { } refusal)
        {
            return refusal;
        }

        bool isNew = await store.FindSite(site, cancel) is null;
        StoredSite stored = SiteMapping.ToStored(site, body.Value);
        await store.PutSite(stored, cancel);
        SiteAnswer answer = SiteMapping.ToAnswer(stored);
        return isNew ? TypedResults.Created($"/v1/sites/{site}", answer) : TypedResults.Ok(answer);
    }
}

using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Troughs;

/// <summary>Routes of troughs.</summary>
internal static class TroughEndpoints
{
    public static void MapTroughs(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder troughs = v1.MapGroup("/sites/{site}/troughs").WithTags("Troughs");
        troughs.MapGet("", ListTroughs);
        troughs.MapGet("{trough}", GetTrough);
        troughs.MapPut("{trough}", PutTrough);
    }

    /// <summary>The troughs of a site, by id.</summary>
    private static async Task<Results<Ok<List<TroughResponse>>, ProblemResult>> ListTroughs(
        string site, ISiteStore store, CancellationToken cancel)
    {
        if (await store.FindSite(site, cancel) is null)
        {
            return Problem.Unknown("site", site);
        }

        IReadOnlyList<StoredTrough> troughs = await store.ListTroughs(site, cancel);
        return TypedResults.Ok(troughs.Select(TroughMapping.ToResponse).ToList());
    }

    /// <summary>One trough, with every setting stated.</summary>
    private static async Task<Results<Ok<TroughResponse>, ProblemResult>> GetTrough(
        string site, string trough, ISiteStore store, CancellationToken cancel) =>
        await store.FindTrough(site, trough, cancel) is { } found
            ? TypedResults.Ok(TroughMapping.ToResponse(found))
            : Problem.Unknown("trough", trough);

    /// <summary>Creates or replaces a trough.</summary>
    private static async Task<Results<Ok<TroughResponse>, Created<TroughResponse>, ProblemResult>> PutTrough(
        string site, string trough, Body<TroughRequest> body, ISiteStore store, CancellationToken cancel)
    {
        if (NameInPath.Refuse("trough", trough) is { } refusal)
        {
            return refusal;
        }

        if (await store.FindSite(site, cancel) is null)
        {
            return Problem.Unknown("site", site);
        }

        bool isNew = await store.FindTrough(site, trough, cancel) is null;
        StoredTrough stored = TroughMapping.ToStored(site, trough, body.Value);
        await store.PutTrough(stored, cancel);
        TroughResponse answer = TroughMapping.ToResponse(stored);
        return isNew ? TypedResults.Created($"/v1/sites/{site}/troughs/{trough}", answer) : TypedResults.Ok(answer);
    }
}

using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>Routes of a site's taster scales.</summary>
internal static class TasterScaleEndpoints
{
    public static void MapTasterScales(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder scales = v1.MapGroup("/sites/{site}/taster-scales").WithTags("Outcomes");
        scales.MapGet("", ListScales);
        scales.MapPut("", PutScales);
    }

    /// <summary>The scales that the site's taster marks made tea on, in the site's own order.</summary>
    private static async Task<Results<Ok<List<TasterScaleRequest>>, ProblemResult>> ListScales(
        string site, ISiteStore sites, IOutcomeStore store, CancellationToken cancel) =>
        await sites.FindSite(site, cancel) is null
            ? Problem.Unknown("site", site)
            : TypedResults.Ok((await store.ListScales(site, cancel)).Select(TasterScaleRequest.Of).ToList());

    /// <summary>Replaces the scales of a site. Marks already given stay as they are.</summary>
    private static async Task<Results<Ok<List<TasterScaleRequest>>, ProblemResult>> PutScales(
        string site, Body<IReadOnlyList<TasterScaleRequest>> body, ISiteStore sites, IOutcomeStore store, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is null)
        {
            return Problem.Unknown("site", site);
        }

        List<FieldError> twice = [.. Repeated(body.Value)];
        if (twice.Count > 0)
        {
            return Problem.InvalidInput(twice);
        }

        await store.PutScales(site, [.. body.Value.Select(scale => scale.ToDomain())], cancel);
        return TypedResults.Ok(body.Value.ToList());
    }

    private static IEnumerable<FieldError> Repeated(IReadOnlyList<TasterScaleRequest> scales) => scales.Index()
        .Where(scale => scales.Take(scale.Index).Any(earlier => earlier.Name == scale.Item.Name))
        .Select(scale => FieldError.Of($"[{scale.Index}].name", $"\"{scale.Item.Name}\"", "each name once"));
}

using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Recalibration.Adopting;
using WitherAdvisor.Api.Recalibration.Responses;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Loft.Adopting;
using WitherAdvisor.Loft.Coefficients;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Sites;
using WitherAdvisor.Loft;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>Routes of a site's coefficient sets.</summary>
internal static class CoefficientSetEndpoints
{
    public static void MapCoefficientSets(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder sets = v1.MapGroup("sites/{site}/coefficient-sets").WithTags("Recalibration");
        sets.MapGet("", ListSets);
        sets.MapPut("{name}", PutSet).Produces<ProblemResponse>(StatusCodes.Status409Conflict);
        sets.MapPost("{name}/adopt", PostAdopt).Produces<ProblemResponse>(StatusCodes.Status409Conflict);
    }

    /// <summary>Every coefficient set of a site and every adoption, newest first.</summary>
    private static async Task<Results<Ok<CoefficientSetsResponse>, ProblemResult>> ListSets(
        string site, ISiteStore sites, ICoefficientStore coefficients, CancellationToken cancel) =>
        await sites.FindSite(site, cancel) is { } found
            ? TypedResults.Ok(RecalibrationMapping.ToResponse(
                await coefficients.List(site, cancel), await coefficients.Adoptions(site, cancel), new SiteClock(found.TimeZone)))
            : Problem.Unknown("site", site);

    /// <summary>
    /// Keeps a set stated by a person; a further call adopts it. Its name is the one in the path, whatever set_name
    /// says; a name that is taken is refused, because sets never change.
    /// </summary>
    private static async Task<Results<Created<CoefficientSetResponse>, ProblemResult>> PutSet(
        string site, string name, Body<CoefficientsRequest> body, ISiteStore sites, SetStating stating, CancellationToken cancel)
    {
        if (NameInPath.Refuse("name", name) is { } refusal)
        {
            return refusal;
        }

        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return Problem.Unknown("site", site);
        }

        return await stating.State(site, name, CoefficientsMapping.ToDomain(body.Value), cancel) is { } set
            ? TypedResults.Created($"/v1/sites/{site}/coefficient-sets", RecalibrationMapping.ToResponse(set, new SiteClock(found.TimeZone)))
            : RecalibrationRefusals.NameTaken(name);
    }

    /// <summary>Adopts any set of a site by name; this also restores an older set or the defaults.</summary>
    private static async Task<Results<Ok<AdoptionResponse>, ProblemResult>> PostAdopt(
        string site, string name, Body<AdoptionRequest> body, ISiteStore sites, SetAdoption adoption, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return Problem.Unknown("site", site);
        }

        AdoptionResult result = await adoption.Adopt(site, name, body.Value.ToDecision(), cancel);
        return result is AdoptionResult.Adopted adopted
            ? TypedResults.Ok(RecalibrationMapping.ToResponse(adopted.Adoption, new SiteClock(found.TimeZone)))
            : RecalibrationRefusals.Problem(result, site, name)!;
    }
}

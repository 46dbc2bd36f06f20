using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Recalibration.Adopting;
using WitherAdvisor.Api.Recalibration.Answers;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>Routes of a site's coefficient sets.</summary>
internal static class CoefficientSetEndpoints
{
    /// <summary>Proposals and defaults are named by the service.</summary>
    private static readonly string[] OwnNames = ["learned-", "defaults-"];

    public static void MapCoefficientSets(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder sets = v1.MapGroup("sites/{site}/coefficient-sets").WithTags("Recalibration");
        sets.MapGet("", ListSets);
        sets.MapPut("{name}", PutSet).Produces<ProblemAnswer>(StatusCodes.Status409Conflict);
        sets.MapPost("{name}/adopt", PostAdopt).Produces<ProblemAnswer>(StatusCodes.Status409Conflict);
    }

    /// <summary>Every coefficient set of a site and every adoption, newest first.</summary>
    private static async Task<Results<Ok<CoefficientSetsAnswer>, ProblemResult>> ListSets(
        string site, ISiteStore sites, ICoefficientStore coefficients, CancellationToken cancel) =>
        await sites.FindSite(site, cancel) is { } found
            ? TypedResults.Ok(RecalibrationMapping.ToAnswer(
                await coefficients.List(site, cancel), await coefficients.Adoptions(site, cancel), new SiteClock(found.TimeZone)))
            : Problem.Unknown("site", site);

    /// <summary>
    /// Keeps a set that a person states; it is adopted by a further call. Its name is the one in the path, whatever set_name
    /// says; a name that is taken is refused, as sets never change.
    /// </summary>
    private static async Task<Results<Created<CoefficientSetAnswer>, ProblemResult>> PutSet(
        string site, string name, Body<CoefficientsInput> body, ISiteStore sites, ICoefficientStore coefficients, TimeProvider clock, CancellationToken cancel)
    {
        if (NameInPath.Refuse("name", name) is { } refusal)
        {
            return refusal;
        }

        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return Problem.Unknown("site", site);
        }

        SiteCoefficients stated = new() { Site = CoefficientsMapping.ToInput(CoefficientsMapping.ToDomain(body.Value with { SetName = name })), Groups = [] };
        StoredCoefficientSet set = new(site, name, clock.NowInMilliseconds(), CoefficientOrigin.ByHand, stated.ToJson(), null);
        return !OwnNames.Any(own => name.StartsWith(own, StringComparison.Ordinal)) && await coefficients.Add(set, cancel)
            ? TypedResults.Created($"/v1/sites/{site}/coefficient-sets", RecalibrationMapping.ToAnswer(set, new SiteClock(found.TimeZone)))
            : Problem.Conflict("name-taken", "The name is taken.", $"Sets never change, so '{name}' cannot be stated anew: choose another name, not beginning with {string.Join(" or ", OwnNames)}.");
    }

    /// <summary>Adopts any set of a site by name; so an older one, or the defaults, is restored.</summary>
    private static async Task<Results<Ok<AdoptionAnswer>, ProblemResult>> PostAdopt(
        string site, string name, Body<AdoptionInput> body, ISiteStore sites, SetAdoption adoption, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return Problem.Unknown("site", site);
        }

        AdoptedSet adopted = await adoption.Adopt(site, name, body.Value, cancel);
        return adopted.Refusal is { } refusal
            ? refusal
            : TypedResults.Ok(RecalibrationMapping.ToAnswer(adopted.Adoption!, new SiteClock(found.TimeZone)));
    }
}

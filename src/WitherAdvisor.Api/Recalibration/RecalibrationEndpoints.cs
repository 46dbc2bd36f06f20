using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Recalibration.Adopting;
using WitherAdvisor.Api.Recalibration.Responses;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Loft.Adopting;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Recalibrating;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Loft.Sites;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>Routes of recalibrations.</summary>
internal static class RecalibrationEndpoints
{
    public static void MapRecalibrations(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder all = v1.MapGroup("sites/{site}").WithTags("Recalibration");
        all.MapPost("recalibrations", PostRecalibration).Produces<ProblemResponse>(StatusCodes.Status409Conflict);
        all.MapGet("recalibrations", ListRecalibrations);
        all.MapGet("recalibrations/{recalibration}", GetRecalibration);
        all.MapPost("recalibrations/{recalibration}/cancel", PostCancel).Produces<ProblemResponse>(StatusCodes.Status409Conflict);
        all.MapPost("recalibrations/{recalibration}/adopt", PostAdopt).Produces<ProblemResponse>(StatusCodes.Status409Conflict);
        all.MapGet("next-measurements", GetNextMeasurements);
    }

    /// <summary>Learns a site's coefficients from its outcomes, in the background. It adopts nothing.</summary>
    private static async Task<Results<Accepted<RecalibrationResponse>, ProblemResult>> PostRecalibration(
        string site, ISiteStore sites, RecalibrationOrders orders, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return Problem.Unknown("site", site);
        }

        return await orders.Ask(site, cancel) is { } queued
            ? TypedResults.Accepted(
                $"/v1/sites/{site}/recalibrations/{queued.Id}", RecalibrationMapping.ToResponse(queued, new SiteClock(found.TimeZone)))
            : RecalibrationRefusals.AlreadyRecalibrating(site);
    }

    /// <summary>The recalibrations of a site, newest first.</summary>
    private static async Task<Results<Ok<List<RecalibrationResponse>>, ProblemResult>> ListRecalibrations(
        string site, ISiteStore sites, IRecalibrationStore jobs, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return Problem.Unknown("site", site);
        }

        SiteClock clock = new(found.TimeZone);
        return TypedResults.Ok((await jobs.List(site, cancel)).Select(job => RecalibrationMapping.ToResponse(job, clock)).ToList());
    }

    /// <summary>State of a recalibration, and its report once it is done.</summary>
    private static async Task<Results<Ok<RecalibrationWithReportResponse>, ProblemResult>> GetRecalibration(
        string site, string recalibration, ISiteStore sites, IRecalibrationStore jobs, ICoefficientStore coefficients, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is not { } found || await Find(site, recalibration, jobs, cancel) is not { } job)
        {
            return Problem.Unknown("recalibration", recalibration);
        }

        StoredCoefficientSet? proposal = job.Status == RecalibrationStatus.Done ? await coefficients.Find(site, job.ProposalName, cancel) : null;
        return TypedResults.Ok(new RecalibrationWithReportResponse(
            RecalibrationMapping.ToResponse(job, new SiteClock(found.TimeZone)),
            proposal?.ReportJson is { } report ? FormerNames.Now(report) : null));
    }

    /// <summary>Stops a waiting or running recalibration. Nothing of it is kept.</summary>
    private static async Task<Results<Ok<RecalibrationResponse>, ProblemResult>> PostCancel(
        string site, string recalibration, ISiteStore sites, IRecalibrationStore jobs, RecalibrationOrders orders, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is not { } found || await Find(site, recalibration, jobs, cancel) is not { } job)
        {
            return Problem.Unknown("recalibration", recalibration);
        }

        StoppedRecalibration stopped = await orders.Cancel(job, cancel);
        return RecalibrationRefusals.Problem(stopped) is { } refusal
            ? refusal
            : TypedResults.Ok(RecalibrationMapping.ToResponse(stopped.Job, new SiteClock(found.TimeZone)));
    }

    /// <summary>
    /// Adopts the set that a recalibration proposes. Where the hold-out does not show it to be better than the set in use, it
    /// is refused unless override_reason says why to adopt it anyway.
    /// </summary>
    private static async Task<Results<Ok<AdoptionResponse>, ProblemResult>> PostAdopt(
        string site, string recalibration, Body<AdoptionRequest> body, ISiteStore sites, IRecalibrationStore jobs, SetAdoption adoption,
        CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is not { } found || await Find(site, recalibration, jobs, cancel) is not { } job)
        {
            return Problem.Unknown("recalibration", recalibration);
        }

        if (job.Status != RecalibrationStatus.Done)
        {
            return Problem.Conflict(
                "no-proposal", "The recalibration has no proposal.",
                $"Recalibration '{job.Id}' is {job.Status.ToString().ToLowerInvariant()}; only a finished one proposes a set.");
        }

        AdoptionResult result = await adoption.Adopt(site, job.ProposalName, body.Value.ToDecision(), cancel);
        return result is AdoptionResult.Adopted adopted
            ? TypedResults.Ok(RecalibrationMapping.ToResponse(adopted.Adoption, new SiteClock(found.TimeZone)))
            : RecalibrationRefusals.Problem(result, site, job.ProposalName)!;
    }

    /// <summary>What to measure next: the measurements that would teach most about a site's leaf and troughs, best first.</summary>
    private static async Task<Results<Ok<NextMeasurementsResponse>, ProblemResult>> GetNextMeasurements(
        string site, ISiteStore sites, LastProposal last, CancellationToken cancel) =>
        await sites.FindSite(site, cancel) is null
            ? Problem.Unknown("site", site)
            : TypedResults.Ok(await last.NextMeasurements(site, cancel));

    private static async Task<StoredRecalibration?> Find(string site, string id, IRecalibrationStore jobs, CancellationToken cancel) =>
        await jobs.Find(id, cancel) is { } job && job.SiteId == site ? job : null;
}

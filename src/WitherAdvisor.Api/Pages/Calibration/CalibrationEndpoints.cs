using Microsoft.AspNetCore.Antiforgery;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Recalibration.Adopting;
using WitherAdvisor.Api.Recalibration.Responses;
using WitherAdvisor.Api.Recalibration;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Loft.Adopting;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Recalibrating;
using WitherAdvisor.Loft.Sites;

namespace WitherAdvisor.Api.Pages.Calibration;

/// <summary>The page on which a site's coefficients are learned, judged and adopted.</summary>
internal static class CalibrationEndpoints
{
    public const string Set = "set";
    public const string AdoptedBy = "adopted_by";
    public const string Reason = "reason";
    public const string OverrideReason = "override_reason";

    public static string Address(string site) => $"/sites/{Uri.EscapeDataString(site)}/calibration";

    public static async Task<IResult> Show(
        string site, HttpContext http, ISiteStore sites, IRecalibrationStore jobs, ICoefficientStore coefficients, LastProposal last,
        TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return PageAnswer.Unknown("site", page);
        }

        (StoredRecalibration Job, ReportResponse Report)? proposal = await last.Of(site, cancel);
        CalibrationView view = new(
            found, await jobs.List(site, cancel),
            RecalibrationMapping.ToResponse(await coefficients.List(site, cancel), await coefficients.Adoptions(site, cancel), new SiteClock(found.TimeZone)),
            proposal?.Job.ProposalName, proposal?.Report, (await last.NextMeasurements(site, cancel)).Measurements);
        return PageAnswer.Of<CalibrationPage>(new { View = view, Page = page });
    }

    public static Task<IResult> Recalibrate(
        string site, HttpContext http, ISiteStore sites, RecalibrationOrders orders, IAntiforgery antiforgery, TimeProvider clock, CancellationToken cancel) =>
        Act(
            site, http, sites, antiforgery, clock,
            async (found, _) => await orders.Ask(found.Id, cancel) is null ? RecalibrationRefusals.AlreadyRecalibrating(found.Id) : null,
            cancel);

    public static Task<IResult> Cancel(
        string site, HttpContext http, ISiteStore sites, IRecalibrationStore jobs, RecalibrationOrders orders, IAntiforgery antiforgery,
        TimeProvider clock, CancellationToken cancel) =>
        Act(
            site, http, sites, antiforgery, clock,
            async (_, _) => (await jobs.List(site, cancel)).FirstOrDefault(job => job.IsOpen) is { } open
                ? RecalibrationRefusals.Problem(await orders.Cancel(open, cancel))
                : null,
            cancel);

    public static Task<IResult> Adopt(
        string site, HttpContext http, ISiteStore sites, SetAdoption adoption, IAntiforgery antiforgery, TimeProvider clock, CancellationToken cancel) =>
        Act(
            site, http, sites, antiforgery, clock,
            async (_, form) =>
            {
                AdoptionDecision decision = new(
                    form.Text(AdoptedBy, form.Words["adopt.who"], AdoptionRequest.LongestName),
                    form.Text(Reason, form.Words["adopt.why"], AdoptionRequest.LongestReason),
                    form.Text(OverrideReason, form.Words["adopt.why_anyway"], AdoptionRequest.LongestReason));
                string name = form.Typed(Set);
                return form.Problems.Count > 0
                    ? Problem.Conflict("unfit-form", form.Words["form.unchanged"], string.Join(' ', form.Problems.Select(problem => $"{problem.Label}: {problem.Text}")))
                    : RecalibrationRefusals.Problem(await adoption.Adopt(site, name, decision, cancel), site, name);
            },
            cancel);

    private static async Task<IResult> Act(
        string site, HttpContext http, ISiteStore sites, IAntiforgery antiforgery, TimeProvider clock,
        Func<StoredSite, FormReader, Task<ProblemResult?>> act, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await sites.FindSite(site, cancel) is not { } found)
        {
            return PageAnswer.Unknown("site", page);
        }

        PostedForm posted = await PostedForm.Read(http, antiforgery, cancel);
        if (!posted.Genuine)
        {
            return PageAnswer.Stale(page);
        }

        return await act(found, new FormReader(page.Words, posted.Typed)) is { } refusal
            ? PageAnswer.Unchanged(refusal.Problem, page)
            : PageAnswer.SeeOther(http, Address(site));
    }
}

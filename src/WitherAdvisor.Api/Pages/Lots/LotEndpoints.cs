using Microsoft.AspNetCore.Antiforgery;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Loft;
using WitherAdvisor.Loft.Intake;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Lots;

/// <summary>What the small form does that adds a lot to a batch.</summary>
internal static class LotEndpoints
{
    public static async Task<IResult> Add(
        string batch, HttpContext http, IBatchStore batches, ISiteStore sites, LotIntake intake, IAntiforgery antiforgery,
        TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await batches.Find(batch, cancel) is not { } found
            || await sites.FindSite(found.SiteId, cancel) is not { } site
            || await sites.FindTrough(found.SiteId, found.TroughId, cancel) is not { } trough)
        {
            return PageAnswer.Unknown("batch", page);
        }

        PostedForm posted = await PostedForm.Read(http, antiforgery, cancel);
        if (!posted.Genuine)
        {
            return PageAnswer.Stale(page);
        }

        page = page with { Units = UnitChoice.With(page.Units, posted.Typed.GetValueOrDefault) };
        FormReader form = new(page.Words, posted.Typed);
        var reader = new LotForm(trough.Trough, new WallClock(site.TimeZone, page.Words), page.Units, clock.NowInMilliseconds());
        if (reader.Read(form, found.Batch.Label) is not { } lot)
        {
            string problems = string.Join(' ', form.Problems.Select(problem => $"{problem.Label}: {problem.Text}"));
            return PageAnswer.Unchanged(problems, page, StatusCodes.Status422UnprocessableEntity);
        }

        return await intake.Add(found.SiteId, batch, lot, cancel) switch
        {
            LotIntakeResult.Refused refused => PageAnswer.Unchanged(
                Problem.InvalidInput([.. refused.Faults.Select(BatchFaultMapping.ToError)]).Problem, page),
            LotIntakeResult.Ended ended => PageAnswer.Unchanged(AlreadyEnded.Batch(ended.Batch).Problem, page),
            _ => PageAnswer.SeeOther(http, $"/batches/{Uri.EscapeDataString(batch)}"),
        };
    }
}

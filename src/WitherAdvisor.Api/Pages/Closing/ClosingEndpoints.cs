using Microsoft.AspNetCore.Antiforgery;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Loft.Closing;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Store;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Closing;

/// <summary>What the small forms do that end a batch at a time said, cancel it, or mix it into another.</summary>
internal static class ClosingEndpoints
{
    public static Task<IResult> Unload(
        string batch, HttpContext http, IBatchStore batches, ISiteStore sites, BatchClosing closing, IAntiforgery antiforgery,
        TimeProvider clock, CancellationToken cancel) => End(
            batch, http, batches, sites, antiforgery, clock, ClosingForm.UnloadedAt, null,
            (at, _, _) => closing.Unload(batch, at, cancel), cancel);

    public static Task<IResult> Cancel(
        string batch, HttpContext http, IBatchStore batches, ISiteStore sites, BatchClosing closing, IAntiforgery antiforgery,
        TimeProvider clock, CancellationToken cancel) => End(
            batch, http, batches, sites, antiforgery, clock, ClosingForm.CancelledAt, ClosingForm.CancelReason,
            (at, reason, _) => closing.Cancel(batch, at, reason, cancel), cancel);

    public static Task<IResult> Mix(
        string batch, HttpContext http, IBatchStore batches, ISiteStore sites, BatchClosing closing, IAntiforgery antiforgery,
        TimeProvider clock, CancellationToken cancel) => End(
            batch, http, batches, sites, antiforgery, clock, ClosingForm.MixedAt, ClosingForm.MixReason,
            (at, reason, form) => closing.Mix(batch, at, form.Typed(ClosingForm.MixedInto), reason, cancel), cancel);

    private static async Task<IResult> End(
        string batch, HttpContext http, IBatchStore batches, ISiteStore sites, IAntiforgery antiforgery, TimeProvider clock,
        string timeField, string? reasonField, Func<DateTimeOffset, string, FormReader, Task<ClosingResult>> end, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await batches.Find(batch, cancel) is not { } found || await sites.FindSite(found.SiteId, cancel) is not { } site)
        {
            return PageAnswer.Unknown("batch", page);
        }

        PostedForm posted = await PostedForm.Read(http, antiforgery, cancel);
        if (!posted.Genuine)
        {
            return PageAnswer.Stale(page);
        }

        FormReader form = new(page.Words, posted.Typed);
        DateTimeOffset? at = form.Time(timeField, page.Words["closing.time"], new WallClock(site.TimeZone, page.Words), required: true);
        string? reason = reasonField is null ? "" : form.Text(reasonField, page.Words["closing.reason"], ClosingForm.LongestReason, required: true);
        if (form.Problems.Count > 0)
        {
            string problems = string.Join(' ', form.Problems.Select(problem => $"{problem.Label}: {problem.Text}"));
            return PageAnswer.Unchanged(problems, page, StatusCodes.Status422UnprocessableEntity);
        }

        ClosingResult result = await end(at!.Value.ToUniversalTime(), reason!, form);
        return result is ClosingResult.Ended
            ? PageAnswer.SeeOther(http, $"/batches/{Uri.EscapeDataString(found.Id)}")
            : PageAnswer.Unchanged(ClosingProblems.Of(result, batch, timeField).Problem, page);
    }
}

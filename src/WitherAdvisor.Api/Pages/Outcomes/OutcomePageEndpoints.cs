using System.Text.Json;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Outcomes;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Outcomes;
using WitherAdvisor.Outcomes;
using WitherAdvisor.Store;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Pages.Outcomes;

/// <summary>The page on which the outcome of a batch is read and entered.</summary>
internal static class OutcomePageEndpoints
{
    public static async Task<IResult> Show(
        string batch, HttpContext http, IBatchStore batches, ISiteStore sites, IOutcomeStore outcomes, OutcomeReading reading,
        TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        return await View(batch, batches, sites, outcomes, reading, page, cancel) is { } view
            ? Draw(view, StatusCodes.Status200OK)
            : PageAnswer.Unknown("batch", page);
    }

    public static async Task<IResult> Enter(
        string batch, HttpContext http, IBatchStore batches, ISiteStore sites, IOutcomeStore outcomes, OutcomeReading reading,
        OutcomeEntry entry, IAntiforgery antiforgery, TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await View(batch, batches, sites, outcomes, reading, page, cancel) is not { } view)
        {
            return PageAnswer.Unknown("batch", page);
        }

        PostedForm posted = await PostedForm.Read(http, antiforgery, cancel);
        if (!posted.Genuine)
        {
            return PageAnswer.Stale(page);
        }

        page = page with { Units = UnitChoice.With(page.Units, posted.Typed.GetValueOrDefault) };
        FormReader reader = new(page.Words, posted.Typed);
        OutcomeRequest typed = OutcomeForm.For(view.Scales, page.Units, view.Kept).Read(reader);
        view = view with { Page = page, Form = reader.Filled };
        if (reader.Problems.Count == 0)
        {
            Refuse(reader, OutcomeChecks.Of(typed));
        }

        if (reader.Problems.Count > 0)
        {
            return Draw(view, StatusCodes.Status422UnprocessableEntity);
        }

        OutcomeEntryResult result = await entry.Enter(batch, OutcomeMapping.ToEntered(typed), cancel);
        if (OutcomeRefusals.Problem(result, batch)?.Problem is not { } problem)
        {
            return PageAnswer.SeeOther(http, $"/batches/{Uri.EscapeDataString(batch)}/outcome");
        }

        Refuse(reader, problem.Errors ?? []);
        return result switch
        {
            OutcomeEntryResult.Unusual unusual => Draw(view with { Odd = unusual.Oddities }, StatusCodes.Status422UnprocessableEntity),
            OutcomeEntryResult.Impossible => Draw(view, StatusCodes.Status422UnprocessableEntity),
            _ => PageAnswer.Unchanged(problem, page),
        };
    }

    private static async Task<OutcomeView?> View(
        string batch, IBatchStore batches, ISiteStore sites, IOutcomeStore outcomes, OutcomeReading reading, PageContext page,
        CancellationToken cancel)
    {
        if (await batches.Find(batch, cancel) is not { } found || await sites.FindSite(found.SiteId, cancel) is not { } site)
        {
            return null;
        }

        IReadOnlyList<TasterScale> scales = await outcomes.ListScales(found.SiteId, cancel);
        OutcomeResponse? kept = await reading.Newest(found, cancel) is { } newest ? new(newest) : null;
        AdviceFigures? advice = await reading.Advice(batch, cancel);
        return new(
            site, found, kept, advice, scales, OutcomeForm.For(scales, page.Units, kept),
            new OutcomeTyped(page.Units, scales).Of(kept ?? new OutcomeRequest()), [], page)
        {
            HasAdvicePage = advice is not null && await batches.FindAdvice(advice.AdviceId, cancel) is not null,
        };
    }

    private static void Refuse(FormReader reader, IEnumerable<FieldError> errors)
    {
        foreach (FieldError error in errors)
        {
            reader.RefuseInEnglish(error.Field, Codes.Sentence(Codes.Plain(error.Field)), $"{error.Given} was given; {error.Allowed} is allowed.");
        }
    }

    private static RazorComponentResult Draw(OutcomeView view, int status) => PageAnswer.Of<OutcomePage>(new { View = view }, status);
}

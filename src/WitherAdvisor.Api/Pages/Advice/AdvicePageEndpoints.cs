using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Loft;

namespace WitherAdvisor.Api.Pages.Advice;

/// <summary>The page of a batch: its advice, and what can be said of it.</summary>
internal static class AdvicePageEndpoints
{
    public static async Task<IResult> Show(
        string batch, HttpContext http, IBatchStore batches, AdviceViewing viewing, TimeProvider clock, CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await batches.Find(batch, cancel) is not { } found)
        {
            return PageAnswer.Unknown("batch", page);
        }

        return await viewing.Newest(found, cancel) switch
        {
            OpenedRecord.Readable { Record: var record } =>
                PageAnswer.Of<AdvicePage>(new { View = await viewing.Of(found, record, page, cancel) }),
            OpenedRecord.Unreadable unreadable => Unreadable(unreadable, page),
            // A batch off a paper log has no advice, only what came of it.
            _ => PageAnswer.SeeOther(http, $"/batches/{Uri.EscapeDataString(found.Id)}/outcome"),
        };
    }

    public static Task<IResult> AdviseAgain(
        string batch, HttpContext http, IBatchStore batches, AdviceMaking making, IAntiforgery antiforgery, TimeProvider clock,
        CancellationToken cancel) =>
        Press(batch, http, batches, antiforgery, clock, found => making.Again(found.Id, cancel), cancel);

    public static Task<IResult> Unload(
        string batch, HttpContext http, IBatchStore batches, IAntiforgery antiforgery, TimeProvider clock, CancellationToken cancel) =>
        Press(batch, http, batches, antiforgery, clock, found => batches.MarkUnloaded(found.Id, NotBeforeLoading(found, clock), cancel), cancel);

    /// <summary>Does what a button says, once: pressed again on leaf that is off the trough it does nothing.</summary>
    private static async Task<IResult> Press(
        string batch, HttpContext http, IBatchStore batches, IAntiforgery antiforgery, TimeProvider clock, Func<StoredBatch, Task> act,
        CancellationToken cancel)
    {
        PageContext page = PageAnswer.Context(http, clock);
        if (await batches.Find(batch, cancel) is not { } found)
        {
            return PageAnswer.Unknown("batch", page);
        }

        if (!(await PostedForm.Read(http, antiforgery, cancel)).Genuine)
        {
            return PageAnswer.Stale(page);
        }

        if (found.IsRunning)
        {
            await act(found);
        }

        return PageAnswer.SeeOther(http, $"/batches/{Uri.EscapeDataString(found.Id)}");
    }

    private static RazorComponentResult Unreadable(OpenedRecord.Unreadable unreadable, PageContext page)
    {
        ProblemResponse problem = RecordProblems.Of(unreadable).Problem;
        return PageAnswer.Message(problem.Title, problem.Detail!, page, problem.Status);
    }

    private static DateTimeOffset NotBeforeLoading(StoredBatch batch, TimeProvider clock)
    {
        DateTimeOffset now = clock.NowInMilliseconds();
        return now > batch.Batch.LoadedAt ? now : batch.Batch.LoadedAt;
    }
}

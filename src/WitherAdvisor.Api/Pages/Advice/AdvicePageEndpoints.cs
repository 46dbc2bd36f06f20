using Microsoft.AspNetCore.Antiforgery;
using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Hosting;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Store;

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

        // A batch off a paper log has no advice, only what came of it.
        return await viewing.Of(found, page, cancel) is { } view
            ? PageAnswer.Of<AdvicePage>(new { View = view })
            : PageAnswer.SeeOther(http, $"/batches/{Uri.EscapeDataString(found.Id)}/outcome");
    }

    public static Task<IResult> AdviseAgain(
        string batch, HttpContext http, IBatchStore batches, AdviceKeeping keeping, IAntiforgery antiforgery, TimeProvider clock,
        CancellationToken cancel) =>
        Press(batch, http, batches, antiforgery, clock, found => keeping.Again(found, cancel), cancel);

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

    private static DateTimeOffset NotBeforeLoading(StoredBatch batch, TimeProvider clock)
    {
        DateTimeOffset now = clock.NowInMilliseconds();
        return now > batch.Batch.LoadedAt ? now : batch.Batch.LoadedAt;
    }
}

using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Recalibration.Running;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>Asks for recalibrations and stops them.</summary>
internal sealed class RecalibrationOrders(IRecalibrationStore jobs, RecalibrationTurns turns, TimeProvider clock)
{
    /// <summary>Queues one; refused where one of the site waits or runs.</summary>
    public async Task<Refusable<StoredRecalibration>> Ask(StoredSite site, CancellationToken cancel)
    {
        DateTimeOffset now = clock.NowInMilliseconds();
        if (await jobs.Queue(NewId.At(now), site.Id, now, cancel) is not { } queued)
        {
            return new(null, Problem.Conflict(
                "already-recalibrating", "The site is being recalibrated.",
                $"One recalibration of site '{site.Id}' waits or runs already. Wait for it, or cancel it first."));
        }

        turns.Wake();
        return new(queued, null);
    }

    /// <summary>Stops one; refused where it has ended.</summary>
    public async Task<Refusable<StoredRecalibration>> Cancel(StoredRecalibration job, CancellationToken cancel)
    {
        bool ended = await jobs.End(job.Id, clock.NowInMilliseconds(), RecalibrationStatus.Cancelled, cancel: cancel);
        turns.Stop(job.Id);
        StoredRecalibration now = (await jobs.Find(job.Id, cancel))!;
        return ended
            ? new(now, null)
            : new(null, Problem.Conflict(
                "recalibration-ended", "The recalibration has ended.", $"Recalibration '{job.Id}' has ended already: it is {now.Status.ToString().ToLowerInvariant()}."));
    }
}

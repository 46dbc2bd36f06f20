using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft.Recalibrating.Running;

namespace WitherAdvisor.Loft.Recalibrating;

/// <summary>Asks for recalibrations and stops them.</summary>
public sealed class RecalibrationOrders(IRecalibrationStore jobs, RecalibrationTurns turns, TimeProvider clock)
{
    /// <summary>Queues one; null where one of the site waits or runs already.</summary>
    public async Task<StoredRecalibration?> Ask(string siteId, CancellationToken cancel)
    {
        DateTimeOffset now = clock.NowInMilliseconds();
        if (await jobs.Queue(NewId.At(now), siteId, now, cancel) is not { } queued)
        {
            return null;
        }

        turns.Wake();
        return queued;
    }

    /// <summary>Stops one that waits or runs.</summary>
    public async Task<StoppedRecalibration> Cancel(StoredRecalibration job, CancellationToken cancel)
    {
        bool ended = await jobs.End(job.Id, clock.NowInMilliseconds(), RecalibrationStatus.Cancelled, cancel: cancel);
        turns.Stop(job.Id);
        return new((await jobs.Find(job.Id, cancel))!, ended);
    }
}

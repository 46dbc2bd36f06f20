using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Loft.Closing;

/// <summary>Ends a running batch in one of the three ways, once.</summary>
public sealed class BatchClosing(IBatchStore store)
{
    public Task<ClosingResult> Unload(string batch, DateTimeOffset at, CancellationToken cancel) =>
        End(batch, at, _ => NoObjection, () => store.MarkUnloaded(batch, at, cancel), cancel);

    public Task<ClosingResult> Cancel(string batch, DateTimeOffset at, string reason, CancellationToken cancel) =>
        End(batch, at, _ => NoObjection, () => store.MarkCancelled(batch, at, reason, cancel), cancel);

    public Task<ClosingResult> Mix(string batch, DateTimeOffset at, string into, string reason, CancellationToken cancel) =>
        End(batch, at, found => Objection(found, into, at, cancel), () => store.MarkMixed(batch, at, into, reason, cancel), cancel);

    private static Task<ClosingResult?> NoObjection => Task.FromResult<ClosingResult?>(null);

    private async Task<ClosingResult> End(
        string batch, DateTimeOffset at, Func<StoredBatch, Task<ClosingResult?>> objection, Func<Task<bool>> mark, CancellationToken cancel)
    {
        if (await store.Find(batch, cancel) is not { } found)
        {
            return new ClosingResult.UnknownBatch();
        }

        if (!found.IsRunning)
        {
            return new ClosingResult.EndedBefore(found);
        }

        if (at < found.Batch.LoadedAt)
        {
            return new ClosingResult.BeforeLoading(found, at);
        }

        if (await objection(found) is { } refusal)
        {
            return refusal;
        }

        // Somebody else may have ended it since it was looked at.
        bool ended = await mark();
        StoredBatch now = await store.Find(batch, cancel) ?? found;
        return ended ? new ClosingResult.Ended(now) : new ClosingResult.EndedBefore(now);
    }

    private async Task<ClosingResult?> Objection(StoredBatch batch, string into, DateTimeOffset at, CancellationToken cancel)
    {
        StoredBatch? other = into == batch.Id ? null : await store.Find(into, cancel);
        if (other is null || other.SiteId != batch.SiteId)
        {
            return new ClosingResult.NoSuchOther(batch, into);
        }

        if (at < other.Batch.LoadedAt)
        {
            return new ClosingResult.BeforeLoadingOfTheOther(other, at);
        }

        return other.IsRunning || (other.Ended == BatchEnd.Unloaded && at <= other.UnloadedAt)
            ? null
            : new ClosingResult.EndedBefore(other);
    }
}

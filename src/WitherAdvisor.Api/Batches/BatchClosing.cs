using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Batches;

namespace WitherAdvisor.Api.Batches;

/// <summary>Ends a running batch in one of the three ways, once.</summary>
internal sealed class BatchClosing(IBatchStore store)
{
    public Task<Closing> Unload(string batch, DateTimeOffset at, CancellationToken cancel) => End(
        batch, "unloaded_at", at, _ => Task.FromResult<ProblemResult?>(null), () => store.MarkUnloaded(batch, at, cancel), cancel);

    public Task<Closing> Cancel(string batch, DateTimeOffset at, string reason, CancellationToken cancel) => End(
        batch, "cancelled_at", at, _ => Task.FromResult<ProblemResult?>(null), () => store.MarkCancelled(batch, at, reason, cancel), cancel);

    public Task<Closing> Mix(string batch, DateTimeOffset at, string into, string reason, CancellationToken cancel) => End(
        batch, "mixed_at", at, found => RefuseOther(found, into, at, cancel), () => store.MarkMixed(batch, at, into, reason, cancel), cancel);

    private async Task<Closing> End(
        string batch, string field, DateTimeOffset at, Func<StoredBatch, Task<ProblemResult?>> refuse, Func<Task<bool>> mark,
        CancellationToken cancel)
    {
        if (await store.Find(batch, cancel) is not { } found)
        {
            return new(null, Problem.Unknown("batch", batch));
        }

        if (!found.IsRunning)
        {
            return new(null, AlreadyEnded.Batch(found));
        }

        if (at < found.Batch.LoadedAt)
        {
            return new(null, Problem.InvalidInput(BeforeLoading(field, at, "loaded_at", found)));
        }

        if (await refuse(found) is { } refusal)
        {
            return new(null, refusal);
        }

        // Somebody else may have ended it since it was looked at.
        bool ended = await mark();
        StoredBatch now = await store.Find(batch, cancel) ?? found;
        return ended ? new(now, null) : new(null, AlreadyEnded.Batch(now));
    }

    private async Task<ProblemResult?> RefuseOther(StoredBatch batch, string into, DateTimeOffset at, CancellationToken cancel)
    {
        StoredBatch? other = into == batch.Id ? null : await store.Find(into, cancel);
        if (other is null || other.SiteId != batch.SiteId)
        {
            return Problem.InvalidInput(FieldError.Of("into", $"\"{into}\"", $"the id of another batch of site '{batch.SiteId}'"));
        }

        if (at < other.Batch.LoadedAt)
        {
            return Problem.InvalidInput(BeforeLoading("mixed_at", at, "loaded_at of the other batch", other));
        }

        return other.IsRunning || (other.Ended == BatchEnd.Unloaded && at <= other.UnloadedAt) ? null : AlreadyEnded.Batch(other);
    }

    private static FieldError BeforeLoading(string field, DateTimeOffset at, string loaded, StoredBatch batch) => FieldError.Of(
        field, $"\"{Rfc3339.Format(at)}\"", $"at or after {loaded}, {Rfc3339.Format(batch.Batch.LoadedAt)}");
}

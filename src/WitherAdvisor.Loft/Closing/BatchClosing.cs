using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Loft.Closing;

/// <summary>Ends a running batch in one of the three ways, once.</summary>
public sealed class BatchClosing(IBatchStore store, ISiteStore sites, AdviceMaking making)
{
    /// <summary>The other batch may grow meanwhile; then it is looked at again, so often at most.</summary>
    private const int MostTries = 10;

    public Task<ClosingResult> Unload(string batch, DateTimeOffset at, CancellationToken cancel) =>
        End(batch, at, _ => NoObjection, () => store.MarkUnloaded(batch, at, cancel), cancel);

    public Task<ClosingResult> Cancel(string batch, DateTimeOffset at, string reason, CancellationToken cancel) =>
        End(batch, at, _ => NoObjection, () => store.MarkCancelled(batch, at, reason, cancel), cancel);

    public Task<ClosingResult> Mix(string batch, DateTimeOffset at, string into, string reason, CancellationToken cancel) =>
        End(batch, at, found => Objection(found, into, at, cancel), () => MarkMixed(batch, at, into, reason, cancel), cancel);

    /// <summary>The other grows by the leaf of this, and is advised on again; one that has left its trough stays as it was.</summary>
    private async Task<bool> MarkMixed(string batch, DateTimeOffset at, string into, string reason, CancellationToken cancel)
    {
        for (int tries = 0; tries < MostTries; tries++)
        {
            if (await store.Find(batch, cancel) is not { IsRunning: true } mixed || await store.Find(into, cancel) is not { } other)
            {
                return false;
            }

            LeafChange? grown = other.IsRunning ? await Grown(other, mixed, cancel) : null;
            if (await store.MarkMixed(batch, at, into, reason, grown, cancel))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>What was mixed in lay in air since its own loading, so it counts from there.</summary>
    private async Task<LeafChange> Grown(StoredBatch other, StoredBatch mixed, CancellationToken cancel)
    {
        Batch leaf = other.Batch.WithLots(lots => [.. lots, .. mixed.Batch.EachLot]);
        StoredSite site = await sites.FindSite(other.SiteId, cancel)
            ?? throw new InvalidOperationException("A batch is kept without its site.");
        StoredTrough trough = await sites.FindTrough(other.SiteId, other.TroughId, cancel)
            ?? throw new InvalidOperationException("A batch is kept without its trough.");
        return new(other, leaf, await making.Make(site, trough, other with { Batch = leaf }, cancel));
    }

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

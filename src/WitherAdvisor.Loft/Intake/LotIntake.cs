using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Loft.Intake;

/// <summary>Takes in a lot that comes onto a running batch: the batch grows and is advised on again.</summary>
public sealed class LotIntake(ISiteStore sites, IBatchStore batches, AdviceMaking making)
{
    /// <summary>Lots that come at once are taken in one after the other; so often at most.</summary>
    private const int MostTries = 10;

    /// <summary>A lot that has come is the one that was expected within so many hours of it.</summary>
    private static readonly TimeSpan AsExpected = TimeSpan.FromHours(2);

    public async Task<LotIntakeResult> Add(string siteId, string batchId, LeafLot lot, CancellationToken cancel)
    {
        for (int tries = 0; tries < MostTries; tries++)
        {
            if (await Try(siteId, batchId, lot.InUtc(), cancel) is { } result)
            {
                return result;
            }
        }

        throw new InvalidOperationException($"Batch '{batchId}' changed each time that a lot was to be added.");
    }

    /// <summary>Null where the batch changed meanwhile.</summary>
    private async Task<LotIntakeResult?> Try(string siteId, string batchId, LeafLot lot, CancellationToken cancel)
    {
        if (await sites.FindSite(siteId, cancel) is not { } site)
        {
            return new LotIntakeResult.UnknownSite();
        }

        if (await batches.Find(batchId, cancel) is not { } batch || batch.SiteId != siteId)
        {
            return new LotIntakeResult.UnknownBatch();
        }

        if (!batch.IsRunning)
        {
            return new LotIntakeResult.Ended(batch);
        }

        StoredTrough trough = await sites.FindTrough(siteId, batch.TroughId, cancel)
            ?? throw new InvalidOperationException("A batch is kept without its trough.");
        Batch lying = Waiting(batch.Batch, lot) is { } expected ? batch.Batch.WithLots(lots => lots.Where(other => other != expected)) : batch.Batch;
        List<BatchFault> faults = [.. BatchRules.Times(lot.PluckedFrom, lot.PluckedTo, lot.LoadedAt, null), .. BatchRules.Lot(lot, lying, trough.Trough)];
        return faults.Count > 0
            ? new LotIntakeResult.Refused(faults)
            : await Keep(site, trough, batch, lying.WithLots(lots => [.. lots, lot]), lot, cancel);
    }

    /// <summary>The expected lot that this one is, the nearest in time; null where none was expected, or it is expected itself.</summary>
    private static LeafLot? Waiting(Batch batch, LeafLot lot) => lot.IsExpected
        ? null
        : batch.Lots.Where(other => other.IsExpected && (other.LoadedAt - lot.LoadedAt).Duration() <= AsExpected)
            .MinBy(other => (other.LoadedAt - lot.LoadedAt).Duration());

    private async Task<LotIntakeResult?> Keep(
        StoredSite site, StoredTrough trough, StoredBatch batch, Batch grown, LeafLot lot, CancellationToken cancel)
    {
        StoredBatch now = batch with { Batch = grown };
        MadeAdvice advice = await making.Make(site, trough, now, cancel);
        return await batches.ChangeLeaf(new(batch, grown, advice), cancel)
            ? new LotIntakeResult.Taken(now, LotKeeping.Warnings(lot, batch), advice.Kept)
            : null;
    }
}

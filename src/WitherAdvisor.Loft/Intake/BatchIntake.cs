using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Loft.Intake;

/// <summary>Takes in a batch: keeps it with its first advice, and warns where lots would mix.</summary>
public sealed class BatchIntake(ISiteStore sites, IBatchStore batches, AdviceMaking making, TimeProvider clock)
{
    /// <summary>Checks a batch, advises on it, keeps both.</summary>
    /// <param name="onceOnly">Whether a batch that lies there already, the same to the last field, is this one sent twice.</param>
    public async Task<IntakeResult> Take(
        string siteId, string troughId, Batch batch, bool onceOnly, CancellationToken cancel)
    {
        if (await sites.FindSite(siteId, cancel) is not { } site)
        {
            return new IntakeResult.UnknownSite();
        }

        if (await sites.FindTrough(siteId, troughId, cancel) is not { } trough)
        {
            return new IntakeResult.UnknownTrough();
        }

        List<BatchFault> faults =
        [
            .. Times(batch),
            .. BatchRules.Load(batch.GreenWeightKg, trough.Trough, batch.Lots.Count > 0),
        ];
        return faults.Count > 0
            ? new IntakeResult.Refused(faults)
            : await Keep(site, trough, batch.InUtc(), onceOnly, cancel);
    }

    private static IEnumerable<BatchFault> Times(Batch batch) =>
        batch.EachLot.SelectMany((lot, place) =>
            BatchRules.Times(lot.PluckedFrom, lot.PluckedTo, lot.LoadedAt, place == 0 ? batch.ReadyBy : null));

    private async Task<IntakeResult> Keep(
        StoredSite site, StoredTrough trough, Batch leaf, bool onceOnly, CancellationToken cancel)
    {
        DateTimeOffset now = clock.NowInMilliseconds();
        StoredBatch batch = new(NewId.At(now), site.Id, trough.Id, leaf, now);
        MadeAdvice advice = await making.Make(site, trough, batch, cancel);
        AddedBatch added = await batches.Add(batch, advice, onceOnly, cancel);
        return added.Same is { } same
            ? new IntakeResult.AlreadyThere(same)
            : new IntakeResult.Taken(batch, LotKeeping.Warnings(batch, added.LyingThere, trough), advice.Kept);
    }
}

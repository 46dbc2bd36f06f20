using System.Text.Json;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.Loft.Outcomes;

/// <summary>Enters the outcome of a batch: checks it, asks about what looks odd, keeps what was there before.</summary>
public sealed class OutcomeEntry(IBatchStore batches, IOutcomeStore outcomes, OutcomeReading reading, TimeProvider clock)
{
    public async Task<OutcomeEntryResult> Enter(string batchId, EnteredOutcome entered, CancellationToken cancel)
    {
        if (await batches.Find(batchId, cancel) is not { } batch)
        {
            return new OutcomeEntryResult.UnknownBatch();
        }

        if (batch.Ended is not BatchEnd.Unloaded)
        {
            return batch.IsRunning ? new OutcomeEntryResult.StillOnTrough() : new OutcomeEntryResult.EndedOtherwise(batch);
        }

        List<OutcomeFault> impossible = [.. OutcomeImpossible.In(entered.Outcome, batch, await outcomes.ListScales(batch.SiteId, cancel))];
        if (impossible.Count > 0)
        {
            return new OutcomeEntryResult.Impossible(impossible);
        }

        IReadOnlyList<OutcomeOddity> odd = OutcomeOddities.In(entered.Outcome, batch, await reading.Advice(batchId, cancel));
        List<OutcomeOddity> unconfirmed = [.. odd.Where(oddity => !entered.Confirmed.Contains(oddity.Word))];
        return unconfirmed.Count > 0
            ? new OutcomeEntryResult.Unusual(unconfirmed)
            : await Keep(batchId, entered, [.. odd.Select(oddity => oddity.Word).Distinct()], cancel);
    }

    private async Task<OutcomeEntryResult> Keep(
        string batchId, EnteredOutcome entered, IReadOnlyList<string> confirmed, CancellationToken cancel)
    {
        StoredOutcome? before = await outcomes.Find(batchId, cancel);
        StoredOutcome now = new(batchId, entered.Outcome, clock.NowInMilliseconds(), entered.EnteredBy, confirmed);
        if (before is not null && Same(before, now))
        {
            return new OutcomeEntryResult.Kept(before, IsFirst: false);
        }

        await outcomes.Put(now, cancel);
        return new OutcomeEntryResult.Kept(now, before is null);
    }

    // Records compare lists by identity, so by what they are written as.
    private static bool Same(StoredOutcome before, StoredOutcome now) =>
        Written(before with { EnteredAt = now.EnteredAt }) == Written(now);

    private static string Written(StoredOutcome outcome) => JsonSerializer.Serialize(outcome);
}

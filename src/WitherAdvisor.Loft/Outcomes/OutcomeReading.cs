using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.Loft.Outcomes;

/// <summary>Reads outcomes together with what they are held against.</summary>
public sealed class OutcomeReading(IOutcomeStore outcomes)
{
    /// <summary>The figures of the last advice given for a batch; null where there was none.</summary>
    public Task<AdviceFigures?> Advice(string batchId, CancellationToken cancel) => outcomes.LastAdvice(batchId, cancel);

    /// <summary>As entered last; null where nobody entered any.</summary>
    public async Task<ReadOutcome?> Newest(StoredBatch batch, CancellationToken cancel) =>
        await outcomes.Find(batch.Id, cancel) is { } found ? Read(batch, found, await Advice(batch.Id, cancel)) : null;

    /// <summary>All versions, newest first.</summary>
    public async Task<IReadOnlyList<ReadOutcome>> History(StoredBatch batch, CancellationToken cancel)
    {
        AdviceFigures? advice = await Advice(batch.Id, cancel);
        return [.. (await outcomes.History(batch.Id, cancel)).Select(version => Read(batch, version, advice))];
    }

    private static ReadOutcome Read(StoredBatch batch, StoredOutcome outcome, AdviceFigures? advice) =>
        new(outcome, OutcomeComputed.Of(batch, outcome, advice));
}

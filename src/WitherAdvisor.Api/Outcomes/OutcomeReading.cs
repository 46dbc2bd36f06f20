using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>Reads outcomes together with what they are held against.</summary>
internal sealed class OutcomeReading(IOutcomeStore outcomes)
{
    /// <summary>The figures of the last advice given for a batch; null where there was none.</summary>
    public Task<AdviceFigures?> Advice(string batchId, CancellationToken cancel) => outcomes.LastAdvice(batchId, cancel);

    public async Task<OutcomeAnswer?> Newest(StoredBatch batch, CancellationToken cancel) =>
        await outcomes.Find(batch.Id, cancel) is { } found ? Answer(batch, found, await Advice(batch.Id, cancel)) : null;

    public async Task<List<OutcomeAnswer>> History(StoredBatch batch, CancellationToken cancel)
    {
        AdviceFigures? advice = await Advice(batch.Id, cancel);
        return [.. (await outcomes.History(batch.Id, cancel)).Select(version => Answer(batch, version, advice))];
    }

    private static OutcomeAnswer Answer(StoredBatch batch, StoredOutcome outcome, AdviceFigures? advice) =>
        new(outcome, OutcomeComputed.Of(batch, outcome, advice));
}

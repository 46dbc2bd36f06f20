using System.Text.Json;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Api.Outcomes;

/// <summary>Enters the outcome of a batch: checks it, asks about what looks odd, keeps what was there before.</summary>
internal sealed class OutcomeEntry(IBatchStore batches, IOutcomeStore outcomes, OutcomeReading reading, TimeProvider clock)
{
    public async Task<EnteredOutcome> Enter(string batchId, OutcomeInput input, CancellationToken cancel)
    {
        if (await batches.Find(batchId, cancel) is not { } batch)
        {
            return EnteredOutcome.Refuse(Problem.Unknown("batch", batchId));
        }

        if (batch.Ended is not BatchEnd.Unloaded)
        {
            return EnteredOutcome.Refuse(batch.IsRunning ? StillOnTrough(batchId) : AlreadyEnded.Batch(batch));
        }

        WitherOutcome outcome = OutcomeMapping.ToDomain(input);
        List<FieldError> impossible = [.. OutcomeImpossible.In(outcome, batch, await outcomes.ListScales(batch.SiteId, cancel))];
        if (impossible.Count > 0)
        {
            return EnteredOutcome.Refuse(Problem.InvalidInput(impossible));
        }

        IReadOnlyList<ProblemWarning> odd = OutcomeOddities.In(outcome, batch, await reading.Advice(batchId, cancel));
        List<ProblemWarning> unconfirmed = [.. odd.Where(warning => input.Confirm?.Contains(warning.Code) != true)];
        return unconfirmed.Count > 0
            ? EnteredOutcome.Refuse(Problem.Unusual(unconfirmed))
            : await Keep(batchId, input, [.. odd.Select(warning => warning.Code).Distinct()], cancel);
    }

    private async Task<EnteredOutcome> Keep(string batchId, OutcomeInput input, IReadOnlyList<string> confirmed, CancellationToken cancel)
    {
        StoredOutcome? before = await outcomes.Find(batchId, cancel);
        StoredOutcome now = OutcomeMapping.ToStored(batchId, input, clock.NowInMilliseconds(), confirmed);
        if (before is not null && Same(before, now))
        {
            return new(before, false, null);
        }

        await outcomes.Put(now, cancel);
        return new(now, before is null, null);
    }

    // Records compare lists by identity, so by what they are written as.
    private static bool Same(StoredOutcome before, StoredOutcome now) =>
        Written(before with { EnteredAt = now.EnteredAt }) == Written(now);

    private static string Written(StoredOutcome outcome) => JsonSerializer.Serialize(outcome);

    private static ProblemResult StillOnTrough(string batchId) => Problem.Conflict(
        "still-on-trough", "The batch is still on its trough.", $"Say first when batch '{batchId}' was unloaded.");
}

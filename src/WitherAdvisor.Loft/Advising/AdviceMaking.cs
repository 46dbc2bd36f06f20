using WitherAdvisor.Advice;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Loft.Records.Opening;

namespace WitherAdvisor.Loft.Advising;

/// <summary>Makes advice that is kept with all that it was made of.</summary>
public sealed class AdviceMaking(
    ISiteStore sites, IBatchStore batches, InputGathering gathering, IResponseWriter answers, TimeProvider clock)
{
    /// <summary>Advice from the newest weather; not yet kept.</summary>
    public async Task<MadeAdvice> Make(StoredSite site, StoredTrough trough, StoredBatch batch, CancellationToken cancel)
    {
        AdviceInputs inputs = await gathering.For(site, trough, batch, cancel);
        AdviceOutcome outcome = Advisor.Advise(inputs.Request);
        DateTimeOffset now = clock.NowInMilliseconds();
        KeptAdvice kept = AdviceRecords.Keep(
            NewId.At(now), batch.Id, now, ModelVersion.Current, inputs, outcome, answers.Write(inputs, outcome));
        return new(kept, FiguresOfAdvice.Of(kept, outcome));
    }

    /// <summary>Advice for a running batch once more, kept beside what was advised before.</summary>
    public async Task<AgainResult> Again(string batchId, CancellationToken cancel)
    {
        if (await batches.Find(batchId, cancel) is not { } batch)
        {
            return new AgainResult.UnknownBatch();
        }

        if (!batch.IsRunning)
        {
            return new AgainResult.Ended(batch);
        }

        StoredSite site = await sites.FindSite(batch.SiteId, cancel)
            ?? throw new InvalidOperationException("A batch is kept without its site.");
        StoredTrough trough = await sites.FindTrough(batch.SiteId, batch.TroughId, cancel)
            ?? throw new InvalidOperationException("A batch is kept without its trough.");
        MadeAdvice advice = await Make(site, trough, batch, cancel);
        await batches.AddAdvice(advice, cancel);
        return new AgainResult.Advised(batch, advice.Kept);
    }
}

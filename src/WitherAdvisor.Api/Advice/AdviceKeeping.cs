using WitherAdvisor.Api.Hosting;
using WitherAdvisor.Loft;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Advice;

/// <summary>Makes advice that is kept with its inputs.</summary>
internal sealed class AdviceKeeping(
    ISiteStore sites, IBatchStore batches, GatheredInput gathered, TimeProvider clock)
{
    /// <summary>Advice from the newest weather; not yet kept.</summary>
    public async Task<StoredAdvice> Make(
        StoredSite site, StoredTrough trough, StoredBatch batch, CancellationToken cancel)
    {
        string kept = AdviceRecipe.Write(await gathered.For(site, trough, batch, cancel));
        DateTimeOffset now = clock.NowInMilliseconds();
        return new(NewId(now), batch.Id, now, ModelVersion.Current, kept, AdviceRecipe.Make(kept));
    }

    /// <summary>Advice for a batch once more, kept beside what was advised before.</summary>
    public async Task<StoredAdvice> Again(StoredBatch batch, CancellationToken cancel)
    {
        StoredSite site = await sites.FindSite(batch.SiteId, cancel)
            ?? throw new InvalidOperationException("A batch is kept without its site.");
        StoredTrough trough = await sites.FindTrough(batch.SiteId, batch.TroughId, cancel)
            ?? throw new InvalidOperationException("A batch is kept without its trough.");
        StoredAdvice advice = await Make(site, trough, batch, cancel);
        await batches.AddAdvice(advice, cancel);
        return advice;
    }

    /// <summary>Ids sort by the time they were made at.</summary>
    public static string NewId(DateTimeOffset now) => Guid.CreateVersion7(now).ToString();
}

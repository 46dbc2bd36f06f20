using System.Text;
using WitherAdvisor.Store;

namespace WitherAdvisor.Api.Advice;

/// <summary>Makes advice that is kept with its inputs, and makes it again from them.</summary>
internal sealed class AdviceKeeping(
    ISiteStore sites, IBatchStore batches, GatheredInput gathered, TimeProvider clock)
{
    /// <summary>Advice from the newest weather; not yet kept.</summary>
    public async Task<StoredAdvice> Make(
        StoredSite site, StoredTrough trough, StoredBatch batch, CancellationToken cancel)
    {
        AdviceInput input = await gathered.For(site, trough, batch, cancel);
        byte[] kept = AdviceRecipe.Write(input);
        byte[] answer = AdviceRecipe.Make(kept);
        DateTimeOffset now = clock.GetUtcNow();
        return new(NewId(now), batch.Id, now, ModelVersion.Current, Text(kept), Text(answer));
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

    /// <summary>The answer made anew from what was kept.</summary>
    public static string Replay(StoredAdvice advice) =>
        Text(AdviceRecipe.Make(Encoding.UTF8.GetBytes(advice.RequestJson)));

    /// <summary>Ids sort by the time they were made at.</summary>
    public static string NewId(DateTimeOffset now) => Guid.CreateVersion7(now).ToString();

    private static string Text(byte[] utf8) => Encoding.UTF8.GetString(utf8);
}

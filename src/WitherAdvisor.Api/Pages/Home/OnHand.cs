using WitherAdvisor.Advice;
using WitherAdvisor.Loft.Sites;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Loft.Records.Opening;

namespace WitherAdvisor.Api.Pages.Home;

/// <summary>Finds what lies on the troughs.</summary>
internal sealed class OnHand(ISiteStore sites, IBatchStore batches)
{
    public async Task<IReadOnlyList<SiteOnHand>> Everywhere(DateTimeOffset now, CancellationToken cancel)
    {
        List<SiteOnHand> found = [];
        foreach (StoredSite site in await sites.ListSites(cancel))
        {
            found.Add(new(site, await At(site.Id, now, cancel)));
        }

        return found;
    }

    public async Task<IReadOnlyList<TroughOnHand>> At(string siteId, DateTimeOffset now, CancellationToken cancel)
    {
        List<TroughOnHand> found = [];
        foreach (StoredTrough trough in await sites.ListTroughs(siteId, cancel))
        {
            List<BatchOnHand> lying = [];
            foreach (StoredBatch batch in await batches.OnTrough(siteId, trough.Id, now, cancel))
            {
                IReadOnlyList<KeptAdvice> given = await batches.ListAdvice(batch.Id, cancel);
                lying.Add(new(batch, given.Count == 0 ? null : ReadyAt(given[0])));
            }

            found.Add(new(trough, lying));
        }

        return found;
    }

    /// <summary>Null where it was refused, and where it cannot be read: its own page says so.</summary>
    private static DateTimeOffset? ReadyAt(KeptAdvice advice) =>
        AdviceRecords.Open(advice) is OpenedRecord.Readable { Record: { Outcome: AdviceOutcome.Advised advised } record }
            ? new SiteClock(record.Inputs.TimeZone).After(record.Inputs.Request.Batch.LoadedAt, advised.Plan.StopHour)
            : null;
}

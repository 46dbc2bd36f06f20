using System.Text.Json;
using WitherAdvisor.Api.Advice.Answers;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;

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
                IReadOnlyList<StoredAdvice> given = await batches.ListAdvice(batch.Id, cancel);
                lying.Add(new(batch, given.Count == 0 ? null : ReadyAt(given[0])));
            }

            found.Add(new(trough, lying));
        }

        return found;
    }

    private static DateTimeOffset? ReadyAt(StoredAdvice advice) =>
        JsonSerializer.Deserialize<AdviceAnswer>(advice.AnswerJson, JsonRules.Answer)?.Plan?.Ready.StopAt;
}

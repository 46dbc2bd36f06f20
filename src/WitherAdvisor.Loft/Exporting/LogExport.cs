using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Loft.Exporting;

/// <summary>Gives out the log of a site.</summary>
public sealed class LogExport(ISiteStore sites, IOutcomeStore outcomes)
{
    /// <summary>The lines that are wanted; null where there is no such site.</summary>
    public async Task<ExportedLog?> Of(string siteId, OutcomeFilter filter, CancellationToken cancel) =>
        await sites.FindSite(siteId, cancel) is { } site ? new(site, outcomes.Log(siteId, filter, cancel)) : null;
}

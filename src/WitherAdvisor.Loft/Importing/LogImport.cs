using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Loft.Importing;

/// <summary>Imports a log of past withers, or says what would come of it. One transaction: all that is kept is kept at once.</summary>
public sealed class LogImport(ISiteStore sites, IOutcomeStore outcomes)
{
    /// <summary>Says what would come of it.</summary>
    /// <param name="lines">Read one by one as they are judged.</param>
    public async Task<ImportResult<TLine>> Preview<TLine>(StoredSite site, IEnumerable<TLine> lines, OddRows odd, CancellationToken cancel)
        where TLine : ILogLine
    {
        ImportRun<TLine> run = await Begin<TLine>(site, odd, adds: false, cancel);
        await outcomes.Preview(site.Id, kept => run.Over(lines, kept), cancel);
        return new ImportResult<TLine>.Previewed(run.Tally);
    }

    /// <summary>Keeps what fits, or nothing where all has to fit and some does not.</summary>
    /// <param name="lines">Read one by one as they are judged.</param>
    public async Task<ImportResult<TLine>> Take<TLine>(
        StoredSite site, IEnumerable<TLine> lines, OddRows odd, KeepRows keep, CancellationToken cancel)
        where TLine : ILogLine
    {
        ImportRun<TLine> run = await Begin<TLine>(site, odd, adds: true, cancel);
        bool kept = await outcomes.Import(
            site.Id,
            import =>
            {
                run.Over(lines, import);
                return keep == KeepRows.GoodRows || run.Tally.AllFit;
            },
            cancel);
        return kept ? new ImportResult<TLine>.Taken(run.Tally) : new ImportResult<TLine>.NothingKept(run.Tally);
    }

    private async Task<ImportRun<TLine>> Begin<TLine>(StoredSite site, OddRows odd, bool adds, CancellationToken cancel)
        where TLine : ILogLine
    {
        IReadOnlyList<StoredTrough> troughs = await sites.ListTroughs(site.Id, cancel);
        IReadOnlyList<TasterScale> scales = await outcomes.ListScales(site.Id, cancel);
        return new(site.Id, troughs, scales, odd, adds);
    }
}

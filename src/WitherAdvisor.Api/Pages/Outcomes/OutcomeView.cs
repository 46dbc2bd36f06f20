using WitherAdvisor.Api.Outcomes;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Outcomes;
using WitherAdvisor.Outcomes;
using WitherAdvisor.Store;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Outcomes;

/// <summary>The page of an outcome as it is drawn.</summary>
/// <param name="Kept">As entered last; null where nobody has.</param>
/// <param name="Advice">What was advised; null where nothing was.</param>
/// <param name="Odd">What looks odd and nobody has confirmed.</param>
public sealed record OutcomeView(
    StoredSite Site, StoredBatch Batch, OutcomeResponse? Kept, AdviceFigures? Advice, IReadOnlyList<TasterScale> Scales,
    OutcomeForm Layout, FilledForm Form, IReadOnlyList<OutcomeOddity> Odd, PageContext Page)
{
    public WallClock Clock { get; } = new(Site.TimeZone, Page.Words);

    /// <summary>False also where figures of an advice came with a log, and the advice itself did not.</summary>
    public bool HasAdvicePage { get; init; }

    public bool CanBeEntered => Batch.Ended == BatchEnd.Unloaded;
}

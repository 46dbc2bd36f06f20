using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Loft.Exporting;

/// <summary>The log of a site on its way out.</summary>
/// <param name="Lines">By loading, each as it is read: all of them never stand in memory.</param>
public sealed record ExportedLog(StoredSite Site, IAsyncEnumerable<LoggedOutcome> Lines);

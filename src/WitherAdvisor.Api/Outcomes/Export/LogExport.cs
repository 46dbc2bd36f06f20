using System.Runtime.CompilerServices;
using WitherAdvisor.Api.Outcomes.Log;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Outcomes.Export;

/// <summary>The log of a site, row by row from the store into a body or a file.</summary>
internal static class LogExport
{
    public static Task Write(IAsyncEnumerable<LogRow> rows, ExportFormat format, Stream body, CancellationToken cancel) =>
        format == ExportFormat.Csv ? CsvExport.Write(rows, body, cancel) : ParquetExport.Write(rows, body, cancel);

    /// <summary>By loading, each as it is read.</summary>
    public static async IAsyncEnumerable<LogRow> Rows(
        StoredSite site, IOutcomeStore store, ExportQuery query, [EnumeratorCancellation] CancellationToken cancel)
    {
        LogWriting writing = new(new SiteClock(site.TimeZone));
        await foreach (LoggedOutcome line in store.Log(site.Id, query.ToFilter(), cancel))
        {
            yield return writing.Row(line);
        }
    }
}

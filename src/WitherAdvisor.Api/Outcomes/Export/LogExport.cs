using WitherAdvisor.Api.Outcomes.Log;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Store;

namespace WitherAdvisor.Api.Outcomes.Export;

/// <summary>The log of a site, row by row from the store into a body or a file.</summary>
internal static class LogExport
{
    public static Task Write(StoredSite site, IOutcomeStore store, ExportQuery query, Stream body, CancellationToken cancel)
    {
        IAsyncEnumerable<LogRow> rows = Rows(site, store.Log(site.Id, query.ToFilter(), cancel));
        return query.Format == ExportFormat.Csv ? CsvExport.Write(rows, body, cancel) : ParquetExport.Write(rows, body, cancel);
    }

    private static async IAsyncEnumerable<LogRow> Rows(StoredSite site, IAsyncEnumerable<LoggedOutcome> log)
    {
        LogWriting writing = new(new SiteClock(site.TimeZone));
        await foreach (LoggedOutcome line in log)
        {
            yield return writing.Row(line);
        }
    }
}

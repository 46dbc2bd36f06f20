using System.Runtime.CompilerServices;
using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.Loft.Exporting;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Sites;

namespace WitherAdvisor.LogFiles.Writing;

/// <summary>The log of a site, row by row into a body or a file.</summary>
internal static class LogFileWriting
{
    public static Task Write(ExportedLog log, ExportFormat format, Stream body, CancellationToken cancel) =>
        format == ExportFormat.Csv ? CsvExport.Write(Rows(log, cancel), body, cancel) : ParquetExport.Write(Rows(log, cancel), body, cancel);

    private static async IAsyncEnumerable<LogRow> Rows(ExportedLog log, [EnumeratorCancellation] CancellationToken cancel)
    {
        LogWriting writing = new(new SiteClock(log.Site.TimeZone));
        await foreach (LoggedOutcome line in log.Lines.WithCancellation(cancel))
        {
            yield return writing.Row(line);
        }
    }
}

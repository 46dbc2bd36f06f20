using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using WitherAdvisor.LogFiles.Columns;

namespace WitherAdvisor.LogFiles.Writing;

/// <summary>The log as CSV by RFC 4180, UTF-8, a few rows at a time: however long it is, little of it stands in memory.</summary>
internal static class CsvExport
{
    public const string ContentType = "text/csv; charset=utf-8";

    private const int RowsAtOnce = 200;

    private static readonly CsvConfiguration Rfc4180 = new(CultureInfo.InvariantCulture) { NewLine = "\r\n" };

    public static async Task Write(IAsyncEnumerable<LogRow> rows, Stream body, CancellationToken cancel)
    {
        await using StringWriter text = new();
        await using CsvWriter csv = new(text, Rfc4180);
        WriteHeader(csv);
        int waiting = 0;
        await foreach (LogRow row in rows)
        {
            WriteRow(csv, row);
            if (++waiting == RowsAtOnce)
            {
                await Send(csv, text, body, cancel);
                waiting = 0;
            }
        }

        await Send(csv, text, body, cancel);
    }

    private static void WriteHeader(CsvWriter csv)
    {
        foreach (LogColumn column in LogColumn.All)
        {
            csv.WriteField(column.Name);
        }

        csv.NextRecord();
    }

    private static void WriteRow(CsvWriter csv, LogRow row)
    {
        foreach (LogColumn column in LogColumn.All)
        {
            csv.WriteField(LogCell.Write(column, row));
        }

        csv.NextRecord();
    }

    private static async Task Send(CsvWriter csv, StringWriter text, Stream body, CancellationToken cancel)
    {
        await csv.FlushAsync();
        StringBuilder written = text.GetStringBuilder();
        await body.WriteAsync(Encoding.UTF8.GetBytes(written.ToString()), cancel);
        written.Clear();
    }
}

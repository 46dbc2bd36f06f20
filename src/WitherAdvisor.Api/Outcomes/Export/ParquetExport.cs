using Parquet;
using Parquet.Schema;
using WitherAdvisor.Api.Outcomes.Log;

namespace WitherAdvisor.Api.Outcomes.Export;

/// <summary>The log as Parquet, a row group at a time. Times are instants in UTC; choices and lists are text, as in CSV.</summary>
internal static class ParquetExport
{
    public const string ContentType = "application/vnd.apache.parquet";

    /// <summary>So many rows stand in memory at once: each row group costs each column a few bytes of the file's footer.</summary>
    private const int RowsInGroup = 2_000;

    /// <summary>Buffers that the writer keeps between row groups; left to itself it keeps hundreds of megabytes.</summary>
    private const int KeptBytes = 2 * 1024 * 1024;

    private static readonly IReadOnlyList<ParquetColumn> Columns = [.. LogColumn.All.Select(ParquetColumn.Of)];

    private static readonly ParquetSchema Schema = new(Columns.Select(column => column.Field));

    private static readonly ParquetOptions Frugal = new()
    {
        MaximumSmallPoolFreeBytes = KeptBytes,
        MaximumLargePoolFreeBytes = KeptBytes,
    };

    public static async Task Write(IAsyncEnumerable<LogRow> rows, Stream body, CancellationToken cancel)
    {
        await using CountedStream counted = new(body);
        await using ParquetWriter writer = await ParquetWriter.CreateAsync(Schema, counted, Frugal, cancellationToken: cancel);
        List<LogRow> group = new(RowsInGroup);
        await foreach (LogRow row in rows)
        {
            group.Add(row);
            if (group.Count == RowsInGroup)
            {
                await WriteGroup(writer, group);
                group.Clear();
            }
        }

        if (group.Count > 0)
        {
            await WriteGroup(writer, group);
        }
    }

    private static async Task WriteGroup(ParquetWriter writer, IReadOnlyList<LogRow> rows)
    {
        using ParquetRowGroupWriter group = writer.CreateRowGroup();
        foreach (ParquetColumn column in Columns)
        {
            await column.Write(group, rows);
        }

        group.CompleteValidate();
    }
}

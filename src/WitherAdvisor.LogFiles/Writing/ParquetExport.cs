using System.Runtime;
using Parquet;
using Parquet.Schema;
using WitherAdvisor.LogFiles.Columns;

namespace WitherAdvisor.LogFiles.Writing;

/// <summary>The log as Parquet, a row group at a time. Times are instants in UTC; choices and lists are text, as in CSV.</summary>
internal static class ParquetExport
{
    public const string ContentType = "application/vnd.apache.parquet";

    /// <summary>
    /// So many rows stand in memory at once. Of more, the buffers grow; of fewer, the writer's description of each column of
    /// each row group, which it keeps until the file's end.
    /// </summary>
    private const int RowsInGroup = 5_000;

    /// <summary>Buffers that the writer keeps between row groups; left to itself it keeps hundreds of megabytes.</summary>
    private const int KeptBytes = 2 * 1024 * 1024;

    private static readonly ParquetOptions Frugal = new()
    {
        MaximumSmallPoolFreeBytes = KeptBytes,
        MaximumLargePoolFreeBytes = KeptBytes,
    };

    public static async Task Write(IAsyncEnumerable<LogRow> rows, Stream body, CancellationToken cancel)
    {
        IReadOnlyList<ParquetColumn> columns = ParquetColumn.All(RowsInGroup);
        ParquetSchema schema = new(columns.Select(column => column.Field));
        await using CountedStream counted = new(body);
        await using ParquetWriter writer = await ParquetWriter.CreateAsync(schema, counted, Frugal, cancellationToken: cancel);
        int waiting = 0;
        await foreach (LogRow row in rows)
        {
            foreach (ParquetColumn column in columns)
            {
                column.Add(row);
            }

            if (++waiting == RowsInGroup)
            {
                await WriteGroup(writer, columns);
                waiting = 0;
            }
        }

        if (waiting > 0)
        {
            await WriteGroup(writer, columns);
        }
    }

    private static async Task WriteGroup(ParquetWriter writer, IReadOnlyList<ParquetColumn> columns)
    {
        using ParquetRowGroupWriter group = writer.CreateRowGroup();
        foreach (ParquetColumn column in columns)
        {
            await column.WriteTo(group);
        }

        group.CompleteValidate();
        GiveBack();
    }

    /// <summary>
    /// The buffers of a row group are large objects, which are collected late and leave holes: a file of a million rows
    /// held twice the memory. A collection takes some milliseconds, a row group a hundred times that.
    /// </summary>
    private static void GiveBack()
    {
        GCSettings.LargeObjectHeapCompactionMode = GCLargeObjectHeapCompactionMode.CompactOnce;
        GC.Collect(GC.MaxGeneration, GCCollectionMode.Forced, blocking: true, compacting: true);
    }
}

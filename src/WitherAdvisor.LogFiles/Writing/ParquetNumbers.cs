using Parquet;
using Parquet.Schema;
using WitherAdvisor.LogFiles.Columns;

namespace WitherAdvisor.LogFiles.Writing;

/// <summary>A column of numbers or times.</summary>
internal sealed class ParquetNumbers<T>(DataField field, Func<LogRow, T?> read, int rowsInGroup) : ParquetColumn(field)
    where T : struct
{
    private readonly T?[] values = new T?[rowsInGroup];
    private int count;

    public override void Add(LogRow row) => values[count++] = read(row);

    public override async Task WriteTo(ParquetRowGroupWriter group)
    {
        await group.WriteAsync<T>(Field, values.AsMemory(0, count));
        count = 0;
    }
}

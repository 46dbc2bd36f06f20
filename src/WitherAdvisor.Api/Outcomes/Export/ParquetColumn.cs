using Parquet;
using Parquet.Schema;
using WitherAdvisor.Api.Outcomes.Log;

namespace WitherAdvisor.Api.Outcomes.Export;

/// <summary>A column of the log as Parquet has it. All may be null there: a reader should not break when one becomes optional.</summary>
internal sealed record ParquetColumn(DataField Field, Func<ParquetRowGroupWriter, IReadOnlyList<LogRow>, Task> Write)
{
    public static ParquetColumn Of(LogColumn column)
    {
        if (column.Type == typeof(double))
        {
            return Numbers<double>(new DataField<double>(column.Name, true), row => (double?)column.Read(row));
        }

        if (column.Type == typeof(int))
        {
            return Numbers<int>(new DataField<int>(column.Name, true), row => (int?)column.Read(row));
        }

        if (column.Type == typeof(DateTimeOffset))
        {
            return Numbers<DateTime>(
                new DateTimeDataField(column.Name, DateTimeFormat.Timestamp, isAdjustedToUTC: true, unit: DateTimeTimeUnit.Millis, isNullable: true),
                row => ((DateTimeOffset?)column.Read(row))?.UtcDateTime);
        }

        DataField<string> text = new(column.Name, true);
        return new(text, (group, rows) => group.WriteAsync(text, [.. rows.Select(row => Text(column, row)!)]));
    }

    private static ParquetColumn Numbers<T>(DataField field, Func<LogRow, T?> read)
        where T : struct =>
        new(field, async (group, rows) => await group.WriteAsync<T>(field, rows.Select(read).ToArray().AsMemory()));

    private static string? Text(LogColumn column, LogRow row) => column.Read(row) switch
    {
        null => null,
        Enum choice => LogCell.Word(choice),
        var text => (string)text,
    };
}

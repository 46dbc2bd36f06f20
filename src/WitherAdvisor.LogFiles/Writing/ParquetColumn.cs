using Parquet;
using Parquet.Schema;
using WitherAdvisor.LogFiles.Columns;

namespace WitherAdvisor.LogFiles.Writing;

/// <summary>A column of the log as Parquet has it. All may be null there: a reader should not break when one becomes optional.</summary>
/// <param name="named">Name and type.</param>
/// <remarks>It gathers values and not rows, so that a row is forgotten as soon as it was read.</remarks>
internal abstract class ParquetColumn(DataField named)
{
    public DataField Field { get; } = named;

    /// <summary>Keeps a row's value until the group is written.</summary>
    public abstract void Add(LogRow row);

    /// <summary>Writes what was kept, and forgets it.</summary>
    public abstract Task WriteTo(ParquetRowGroupWriter group);

    /// <summary>One for each column of the log, in its order.</summary>
    /// <param name="rowsInGroup">The most values that each will keep.</param>
    public static IReadOnlyList<ParquetColumn> All(int rowsInGroup) => [.. LogColumn.All.Select(column => Of(column, rowsInGroup))];

    private static ParquetColumn Of(LogColumn column, int rowsInGroup)
    {
        if (column.Type == typeof(double))
        {
            return new ParquetNumbers<double>(new DataField<double>(column.Name, true), row => (double?)column.Read(row), rowsInGroup);
        }

        if (column.Type == typeof(int))
        {
            return new ParquetNumbers<int>(new DataField<int>(column.Name, true), row => (int?)column.Read(row), rowsInGroup);
        }

        if (column.Type == typeof(DateTimeOffset))
        {
            return new ParquetNumbers<DateTime>(
                new DateTimeDataField(column.Name, DateTimeFormat.Timestamp, isAdjustedToUTC: true, unit: DateTimeTimeUnit.Millis, isNullable: true),
                row => ((DateTimeOffset?)column.Read(row))?.UtcDateTime,
                rowsInGroup);
        }

        return new ParquetTexts(column, rowsInGroup);
    }
}

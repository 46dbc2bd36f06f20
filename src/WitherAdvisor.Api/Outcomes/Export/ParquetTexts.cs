using Parquet;
using Parquet.Schema;
using WitherAdvisor.Api.Outcomes.Log;

namespace WitherAdvisor.Api.Outcomes.Export;

/// <summary>A column of text: what people wrote, lists, and choices as in CSV.</summary>
internal sealed class ParquetTexts(LogColumn column, int rowsInGroup) : ParquetColumn(new DataField<string>(column.Name, true))
{
    private readonly List<string?> values = new(rowsInGroup);

    public override void Add(LogRow row) => values.Add(column.Read(row) switch
    {
        null => null,
        Enum choice => LogCell.Word(choice),
        var text => (string)text,
    });

    public override async Task WriteTo(ParquetRowGroupWriter group)
    {
        await group.WriteAsync(Field, values!);
        values.Clear();
    }
}

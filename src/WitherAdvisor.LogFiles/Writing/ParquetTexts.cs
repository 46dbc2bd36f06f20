using Parquet;
using Parquet.Schema;
using WitherAdvisor.LogFiles.Columns;
using WitherAdvisor.Loft;

namespace WitherAdvisor.LogFiles.Writing;

/// <summary>A column of text: what people wrote, lists, and choices as in CSV.</summary>
internal sealed class ParquetTexts(LogColumn column, int rowsInGroup) : ParquetColumn(new DataField<string>(column.Name, true))
{
    /// <summary>So many different texts are kept once: choices and names repeat, notes do not.</summary>
    private const int MostShared = 200;

    private readonly List<string?> values = new(rowsInGroup);
    private readonly HashSet<string> shared = [];

    public override void Add(LogRow row) => values.Add(column.Read(row) switch
    {
        null => null,
        Enum choice => Shared(KeptWord.Of(choice)),
        var text => Shared((string)text),
    });

    public override async Task WriteTo(ParquetRowGroupWriter group)
    {
        await group.WriteAsync(Field, values!);
        values.Clear();
    }

    private string Shared(string text)
    {
        if (shared.TryGetValue(text, out string? same))
        {
            return same;
        }

        if (shared.Count < MostShared)
        {
            shared.Add(text);
        }

        return text;
    }
}

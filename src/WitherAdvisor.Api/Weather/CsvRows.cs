using System.Text.Json;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Input;

namespace WitherAdvisor.Api.Weather;

/// <summary>The rows of readings as CSV, and all that is wrong with them by line and column.</summary>
internal sealed class CsvRows(string[] header)
{
    private readonly List<ReadingInput> readings = [];
    private readonly List<FieldError> errors = [];
    private readonly Dictionary<DateTimeOffset, int> lineOfTime = [];

    public int Count { get; private set; }

    public IReadOnlyList<ReadingInput> Readings => readings;

    public IReadOnlyList<FieldError> Errors => Count switch
    {
        0 => [FieldError.Missing("line 2", "at least one reading")],
        > Shapes.LongestBody => [FieldError.Of("body", $"more than {Shapes.LongestBody} readings", $"1 to {Shapes.LongestBody} readings")],
        _ => errors,
    };

    public void Add(int line, string[] cells)
    {
        Count++;
        IEnumerable<FieldError> wrong = cells.Length == header.Length
            ? Read(line, cells).Select(error => error.At($"line {line}, column {error.Field}"))
            : [FieldError.Of($"line {line}", $"{cells.Length} cells", $"{header.Length} cells, as in the header")];
        errors.AddRange(wrong);
    }

    private IEnumerable<FieldError> Read(int line, string[] cells)
    {
        JsonElement row = TextFields.ToJson(CsvHeader.Columns, Known(cells));
        List<FieldError> wrong = [];
        CsvHeader.Columns.Check(row, "", wrong);
        if (wrong.Count > 0)
        {
            return wrong;
        }

        ReadingInput reading = row.Deserialize<ReadingInput>(JsonRules.Input)!;
        readings.Add(reading);
        return lineOfTime.TryAdd(reading.Time, line)
            ? reading.CrossCheck()
            : [FieldError.Of(CsvHeader.Time, Rfc3339.Format(reading.Time), $"each time once; line {lineOfTime[reading.Time]} has it too")];
    }

    private IEnumerable<KeyValuePair<string, string>> Known(string[] cells) =>
        header.Zip(cells, (name, cell) => KeyValuePair.Create(name, cell.Trim())).Where(pair => pair.Value.Length > 0);
}

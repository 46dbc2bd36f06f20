using System.Text.Json;
using WitherAdvisor.Fields;
using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Weather;

/// <summary>The rows of readings as CSV: the good ones, and all that is wrong with the others by line and column.</summary>
internal sealed class CsvRows(string[] header, DateTimeOffset? latest)
{
    private readonly List<ReadingRequest> good = [];
    private readonly List<RefusedRowResponse> refused = [];
    private readonly Dictionary<DateTimeOffset, int> lineOfTime = [];

    public int Count { get; private set; }

    public CsvTable Table => new(good, refused);

    /// <summary>What is wrong with all of them together; null where nothing is.</summary>
    public FieldError? Refusal => Count switch
    {
        0 => FieldError.Missing("line 2", "at least one reading"),
        > Shapes.LongestBody => FieldError.Of("body", $"more than {Shapes.LongestBody} readings", $"1 to {Shapes.LongestBody} readings"),
        _ => null,
    };

    public void Add(int line, string[] cells)
    {
        Count++;
        List<FieldError> wrong = cells.Length == header.Length
            ? [.. Read(line, cells).Select(error => error.At($"line {line}, column {error.Field}"))]
            : [FieldError.Of($"line {line}", $"{cells.Length} cells", $"{header.Length} cells, as in the header")];
        if (wrong.Count > 0)
        {
            refused.Add(new() { Line = line, Errors = wrong });
        }
    }

    /// <summary>What is wrong with a row; one without fault is kept.</summary>
    private List<FieldError> Read(int line, string[] cells)
    {
        JsonElement row = TextFields.ToJson(CsvHeader.Columns, Known(cells));
        List<FieldError> wrong = [];
        CsvHeader.Columns.Check(row, "", wrong);
        if (wrong.Count > 0)
        {
            return wrong;
        }

        ReadingRequest reading = row.Deserialize<ReadingRequest>(JsonRules.Request)!;
        wrong.AddRange(reading.CrossCheck());
        wrong.AddRange(ObservedTimes.Check(CsvHeader.Time, reading.Time, latest) is { } ahead ? [ahead] : []);
        if (wrong.Count == 0 && lineOfTime.TryAdd(reading.Time, line))
        {
            good.Add(reading);
        }
        else if (wrong.Count == 0)
        {
            wrong.Add(FieldError.Of(CsvHeader.Time, Rfc3339.Format(reading.Time), $"each time once; line {lineOfTime[reading.Time]} has it too"));
        }

        return wrong;
    }

    private IEnumerable<KeyValuePair<string, string>> Known(string[] cells) =>
        header.Zip(cells, (name, cell) => KeyValuePair.Create(name, cell.Trim())).Where(pair => pair.Value.Length > 0);
}

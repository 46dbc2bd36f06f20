using System.Text.Json;
using WitherAdvisor.Fields;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.LogFiles.Columns;

namespace WitherAdvisor.LogFiles.Reading;

/// <summary>Reads the cells of one row by the names in the header.</summary>
/// <param name="local">The instant of a date and a time on the site's wall clock; null where they are none.</param>
internal sealed class LogCells(string[] header, Func<string, string, DateTimeOffset?> local)
{
    private readonly LogColumn?[] columns = [.. header.Select(name => LogColumn.All.FirstOrDefault(column => column.Name == name))];

    /// <summary>Null where a cell does not fit; each that does not is added to the errors by its column's name.</summary>
    public LogRow? Read(string[] cells, ICollection<FieldError> errors)
    {
        if (cells.Length != header.Length)
        {
            errors.Add(FieldError.Of("row", $"{cells.Length} cells", $"{header.Length} cells, as in the header"));
            return null;
        }

        JsonElement row = TextFields.ToJson(LogColumn.Shape, Known(cells));
        LogColumn.Shape.Check(row, "", errors);
        return errors.Count > 0 ? null : row.Deserialize<LogRow>(JsonRules.Request);
    }

    /// <summary>Columns in which this row says anything.</summary>
    public IEnumerable<LogColumn> Given(string[] cells) =>
        columns.Zip(cells).Where(pair => pair.Second.Trim().Length > 0).Select(pair => pair.First!);

    private IEnumerable<KeyValuePair<string, string>> Known(string[] cells) => columns.Zip(cells)
        .Where(pair => pair.Second.Trim().Length > 0)
        .Select(pair => KeyValuePair.Create(pair.First!.Name, Plain(pair.First, pair.Second)));

    private string Plain(LogColumn column, string cell) => column switch
    {
        { Field.Shape: InstantShape } => Instant(cell.Trim()),
        // Names, ids and numbers have no blanks round them; what people wrote is taken as it stands.
        { IsText: true } when column.Field.Shape is TextShape { Pattern: null } => FormulaGuard.Take(cell),
        _ => cell.Trim(),
    };

    /// <summary>A paper log has the loft's clock: date and time without offset are the site's.</summary>
    private string Instant(string cell)
    {
        string[] parts = cell.Split(' ', 'T');
        return parts.Length == 2 && parts[1].Length <= "13:00:00".Length && local(parts[0], WithoutSeconds(parts[1])) is { } time
            ? Rfc3339.Format(time)
            : cell;
    }

    private static string WithoutSeconds(string time) => time.EndsWith(":00", StringComparison.Ordinal) && time.Length > "13:00".Length ? time[..^3] : time;
}

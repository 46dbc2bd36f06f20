using System.Text.Json;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Input;
using WitherAdvisor.Api.Outcomes.Log;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>Reads the cells of one row by the names in the header.</summary>
internal sealed class LogCells(string[] header, WallClock clock)
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
        return errors.Count > 0 ? null : row.Deserialize<LogRow>(JsonRules.Input);
    }

    /// <summary>Columns in which this row says anything.</summary>
    public IEnumerable<LogColumn> Given(string[] cells) =>
        columns.Zip(cells).Where(pair => pair.Second.Trim().Length > 0).Select(pair => pair.First!);

    private IEnumerable<KeyValuePair<string, string>> Known(string[] cells) => columns.Zip(cells)
        .Where(pair => pair.Second.Trim().Length > 0)
        .Select(pair => KeyValuePair.Create(pair.First!.Name, Plain(pair.First, pair.Second)));

    private string Plain(LogColumn column, string cell) => column switch
    {
        { Field.Shape: InstantShape } => Time(cell.Trim()),
        // Names, ids and numbers have no blanks round them; what people wrote is taken as it stands.
        { IsText: true } when column.Field.Shape is TextShape { Pattern: null } => FormulaGuard.Take(cell),
        _ => cell.Trim(),
    };

    /// <summary>A paper log has the loft's clock: date and time without offset are the site's.</summary>
    private string Time(string cell)
    {
        string[] parts = cell.Split(' ', 'T');
        return parts.Length == 2 && parts[1].Length <= "13:00:00".Length && clock.Read(parts[0], WithoutSeconds(parts[1])) is { } local
            ? Rfc3339.Format(local)
            : cell;
    }

    private static string WithoutSeconds(string time) => time.EndsWith(":00", StringComparison.Ordinal) && time.Length > "13:00".Length ? time[..^3] : time;
}

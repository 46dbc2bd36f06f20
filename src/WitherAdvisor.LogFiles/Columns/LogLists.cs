using System.Globalization;
using WitherAdvisor.Fields;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.LogFiles.Columns;

/// <summary>Lists in one cell, with semicolons between the values.</summary>
internal static class LogLists
{
    private const char Between = ';';

    /// <summary>Null where no value is known.</summary>
    public static string? Numbers(IReadOnlyList<double?> values) => values.All(value => value is null)
        ? null
        : string.Join(Between, values.Select(value => value is { } known ? LogCell.Number(known) : ""));

    public static string? Numbers(IReadOnlyList<double> values) => Numbers([.. values.Select(value => (double?)value)]);

    /// <summary>Unknown values stay null; errors name the column.</summary>
    public static IReadOnlyList<double?> ReadNumbers(string? cell, string column, ICollection<FieldError> errors)
    {
        List<double?> values = [];
        foreach (string part in cell?.Split(Between, StringSplitOptions.TrimEntries) ?? [])
        {
            bool isNumber = double.TryParse(part, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number);
            values.Add(isNumber ? number : null);
            if (!isNumber && part.Length > 0)
            {
                errors.Add(FieldError.Of(column, part, "numbers with semicolons between them"));
            }
        }

        return values;
    }

    public static string? Texts(IReadOnlyList<string> values) => values.Count == 0 ? null : string.Join(Between, values);

    public static IReadOnlyList<string> ReadTexts(string? cell) =>
        cell?.Split(Between, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) ?? [];

    public static string? Marks(IReadOnlyList<TasterMark> marks) =>
        Texts([.. marks.Select(mark => $"{mark.Scale}={LogCell.Number(mark.Mark)}")]);

    public static IReadOnlyList<TasterMark> ReadMarks(string? cell, ICollection<FieldError> errors)
    {
        List<TasterMark> marks = [];
        foreach (string part in ReadTexts(cell))
        {
            string[] sides = part.Split('=', StringSplitOptions.TrimEntries);
            if (sides.Length == 2 && double.TryParse(sides[1], NumberStyles.Float, CultureInfo.InvariantCulture, out double mark) && double.IsFinite(mark))
            {
                marks.Add(new(sides[0], mark));
            }
            else
            {
                errors.Add(FieldError.Of("marks", part, "a scale, an equals sign and a number: Briskness=7.5"));
            }
        }

        return marks;
    }
}

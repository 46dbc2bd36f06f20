using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Weather;

/// <summary>The first line of readings as CSV.</summary>
internal static class CsvHeader
{
    public const string Time = "time";

    public static ObjectShape Columns { get; } = (ObjectShape)Shapes.Of(typeof(ReadingRequest));

    public static IEnumerable<FieldError> Check(string[] header)
    {
        string known = "columns named: " + string.Join(", ", Columns.Fields.Select(field => field.Name));
        foreach (string name in header.Where(name => !Columns.Fields.Any(field => field.Name == name)))
        {
            yield return FieldError.Of("line 1", $"\"{name}\"", known);
        }

        foreach (string name in header.GroupBy(name => name).Where(same => same.Skip(1).Any()).Select(same => same.Key))
        {
            yield return FieldError.Of("line 1", $"\"{name}\" twice", "each column once");
        }

        if (!header.Contains(Time))
        {
            yield return FieldError.Missing("line 1, column time", known);
        }
    }
}

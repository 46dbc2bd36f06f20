using System.Globalization;
using Xunit;

namespace WitherAdvisor.Tests;

/// <summary>One line of a table of reference values in fixtures/, read by the names in its first line.</summary>
public sealed record ReferenceRow(string Line, IReadOnlyDictionary<string, string> Cells)
{
    public string Text(string column) => Cells[column];

    public double Number(string column) => double.Parse(Cells[column], CultureInfo.InvariantCulture);

    /// <summary>Every line of a CSV file without quotes, under fixtures/.</summary>
    public static IReadOnlyList<ReferenceRow> ReadAll(string file)
    {
        string[] lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "fixtures", file));
        string[] names = lines[0].Split(',');
        return [.. lines.Skip(1).Select(line => new ReferenceRow(line, Pair(names, line.Split(','))))];
    }

    /// <summary>A cell such as "t=25;p=101325" as a row of its own.</summary>
    public ReferenceRow Inputs(string column)
    {
        string[][] pairs = [.. Cells[column].Split(';').Select(pair => pair.Split('='))];
        return new(Cells[column], pairs.ToDictionary(pair => pair[0], pair => pair[1], StringComparer.Ordinal));
    }

    public override string ToString() => Line;

    private static Dictionary<string, string> Pair(string[] names, string[] cells)
    {
        Assert.Equal(names.Length, cells.Length);
        return names.Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second, StringComparer.Ordinal);
    }
}

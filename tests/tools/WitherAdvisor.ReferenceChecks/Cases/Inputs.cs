using System.Globalization;

namespace WitherAdvisor.ReferenceChecks.Cases;

/// <summary>What a reference case was worked out for: values by name, as they stand in its file.</summary>
public sealed class Inputs(IReadOnlyDictionary<string, string> cells)
{
    public IReadOnlyDictionary<string, string> Cells => cells;

    public bool Has(string name) => cells.ContainsKey(name);

    public string Text(string name) => cells.TryGetValue(name, out string? text)
        ? text
        : throw new InvalidDataException($"the case names no {name}: it has {string.Join(", ", cells.Keys)}");

    public double Number(string name) => double.Parse(Text(name), CultureInfo.InvariantCulture);

    public double Number(string name, double unlessGiven) => Has(name) ? Number(name) : unlessGiven;

    /// <summary>The same with a cell such as "t=25;p=101325" read as values of its own.</summary>
    public Inputs Opened(string name)
    {
        var opened = cells.Where(cell => cell.Key != name).ToDictionary(StringComparer.Ordinal);
        foreach (string pair in Text(name).Split(';', StringSplitOptions.RemoveEmptyEntries))
        {
            string[] sides = pair.Split('=', 2);
            opened.Add(sides[0], sides[1]);
        }

        return new(opened);
    }

    public Inputs With(string name, string value) => new(new Dictionary<string, string>(cells, StringComparer.Ordinal) { [name] = value });
}

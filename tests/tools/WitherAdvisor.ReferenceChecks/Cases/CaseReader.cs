using System.Globalization;

namespace WitherAdvisor.ReferenceChecks.Cases;

/// <summary>Turns the rows of a file into cases.</summary>
public static class CaseReader
{
    private const string Formulation = "formulation";
    private const string Any = "any";

    public static IEnumerable<ReferenceCase> Read(CaseFile file) =>
        CaseRows.Read(file)
            .Select(row => (file.Given ?? new Dictionary<string, string>()).Aggregate(row, (filled, given) => filled.With(given.Key, given.Value)))
            .SelectMany(ByFormulation)
            .SelectMany(row => file.Expected is { } columns ? Several(file, row, columns) : [One(file, row)]);

    /// <summary>What does not hang on the formulation of moist air must hold in both.</summary>
    private static IEnumerable<Inputs> ByFormulation(Inputs row) => row.Has(Formulation) && row.Text(Formulation) == Any
        ? [row.With(Formulation, "real_gas"), row.With(Formulation, "ideal_gas")]
        : [row];

    private static ReferenceCase One(CaseFile file, Inputs row)
    {
        Inputs opened = row.Opened("inputs");
        string label = row.Has(Formulation) ? $"{row.Text("inputs")} ({row.Text(Formulation)})" : row.Text("inputs");
        return new(
            row.Text("quantity"), label, opened, row.Text("expected"), row.Number("expected"),
            Tolerance.Of(row.Text("tolerance_kind"), row.Number("tolerance"), row.Text("reason")),
            row.Has("source") ? row.Text("source") : file.Source);
    }

    private static IEnumerable<ReferenceCase> Several(CaseFile file, Inputs row, IReadOnlyDictionary<string, CaseFile.Column> columns)
    {
        string label = string.Join(';', (file.Label ?? []).Select(name => $"{name}={row.Text(name)}"));
        foreach ((string pattern, CaseFile.Column column) in columns)
        {
            foreach (string name in row.Cells.Keys.Where(name => Matches(pattern, name)))
            {
                yield return new(
                    name, label, row, row.Text(name), double.Parse(row.Text(name), CultureInfo.InvariantCulture),
                    column.ToTolerance(), row.Has("source") ? row.Text("source") : file.Source);
            }
        }
    }

    private static bool Matches(string pattern, string name)
    {
        string[] wanted = pattern.Split('.');
        string[] parts = name.Split('.');
        return wanted.Length == parts.Length && wanted.Zip(parts).All(pair => pair.First == "*" || pair.First == pair.Second);
    }
}

namespace WitherAdvisor.ReferenceChecks.Cases;

/// <summary>
/// A file of reference cases as its description beside it (<c>*.checks.json</c>) has it. With <see cref="Expected"/> each
/// row holds several values, by column; without, each row is one value and says itself what is expected.
/// </summary>
/// <param name="Title">Heading in the table.</param>
/// <param name="Runner">Name of what works out ours.</param>
/// <param name="Data">The file of cases, beside the description: CSV, or JSON with a list "cases".</param>
/// <param name="Source">Whose values; a row's own source wins.</param>
/// <param name="Licence">Under which they may stand here.</param>
/// <param name="Label">Columns that tell a row from the others.</param>
/// <param name="Given">Inputs that all rows share.</param>
/// <param name="Expected">By column ("*" for any part of a path in JSON) the tolerance and its reason.</param>
public sealed record CaseFile(
    string Title,
    string Runner,
    string Data,
    string Source,
    string Licence,
    IReadOnlyList<string>? Label = null,
    IReadOnlyDictionary<string, string>? Given = null,
    IReadOnlyDictionary<string, CaseFile.Column>? Expected = null)
{
    /// <summary>Folder of the description, from the root of the repository.</summary>
    public string Folder { get; init; } = "";

    /// <summary>Of one column of values.</summary>
    public sealed record Column(string Kind, double Tolerance, string Reason)
    {
        public Cases.Tolerance ToTolerance() => Cases.Tolerance.Of(Kind, Tolerance, Reason);
    }
}

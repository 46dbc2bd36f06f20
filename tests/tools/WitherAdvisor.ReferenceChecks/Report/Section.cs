namespace WitherAdvisor.ReferenceChecks.Report;

/// <summary>One source of checks.</summary>
/// <param name="Title">Heading.</param>
/// <param name="About">Source and licence, in a sentence or two.</param>
/// <param name="Rows">Ours beside theirs.</param>
/// <param name="Notes">Lines printed as they are under the table.</param>
public sealed record Section(string Title, string About, IReadOnlyList<CheckRow> Rows, IReadOnlyList<string>? Notes = null);

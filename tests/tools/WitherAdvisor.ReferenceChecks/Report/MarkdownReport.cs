using System.Text;

namespace WitherAdvisor.ReferenceChecks.Report;

/// <summary>The whole as a Markdown document. A section of many rows is told by its worst row of each check.</summary>
public static class MarkdownReport
{
    private const int MostRowsInFull = 40;

    /// <summary>Differences nearer than this share of the tolerance are one difference: the first of them is shown.</summary>
    private const int DecimalsOfUse = 3;

    public static string Write(IReadOnlyList<Section> sections, bool verbose)
    {
        int rows = sections.Sum(section => section.Rows.Count);
        int outside = sections.Sum(section => section.Rows.Count(row => !row.Passes));
        var text = new StringBuilder();
        text.Append("# Ours beside theirs\n\n")
            .Append("Written by `dotnet run --project tests/tools/WitherAdvisor.ReferenceChecks`, which is a test too. Every value under\n")
            .Append("\"theirs\" comes from outside this project's library; each section says from where. No row is a regression pin.\n")
            .Append("A section of more than ").Append(MostRowsInFull).Append(" rows shows the worst of each check; `-- --verbose` prints them all.\n\n")
            .Append("**").Append(rows).Append(" checks, ").Append(outside).Append(" outside their tolerance.**\n");
        foreach (Section section in sections)
        {
            Append(text, section, verbose);
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, Section section, bool verbose)
    {
        text.Append("\n## ").Append(section.Title).Append("\n\n").Append(section.About).Append("\n\n");
        bool inFull = verbose || section.Rows.Count <= MostRowsInFull;
        if (inFull)
        {
            text.Append("| check | where | source | ours | theirs | difference | tolerance | |\n|---|---|---|--:|--:|--:|--:|---|\n");
            AppendAll(text, section.Rows.Select(row => $"| {row.Check} | {row.Where} | {row.Source} {Values(row)}"));
        }
        else
        {
            text.Append("| check | rows | worst at | source | ours | theirs | difference | tolerance | |\n|---|--:|---|---|--:|--:|--:|--:|---|\n");
            AppendAll(text, Groups(section).Select(group => LineOf(group.Key, [.. group])));
        }

        AppendReasons(text, section);
        AppendAll(text, section.Notes ?? []);
    }

    private static void AppendReasons(StringBuilder text, Section section)
    {
        text.Append('\n');
        AppendAll(text, section.Rows.Select(row => $"Tolerance {Numbers.Tolerance(row)}: {row.Tolerance.Reason}.  ").Distinct(StringComparer.Ordinal));
    }

    private static void AppendAll(StringBuilder text, IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            text.Append(line).Append('\n');
        }
    }

    private static string Values(CheckRow row) =>
        $"| {Numbers.Ours(row)} | {Numbers.Theirs(row)} | {Numbers.Difference(row)} | {Numbers.Tolerance(row)} | {(row.Passes ? "pass" : "**FAIL**")} |";

    /// <summary>One check at one tolerance; a path in JSON is one check whatever its place in a list.</summary>
    private static IEnumerable<IGrouping<string, CheckRow>> Groups(Section section) =>
        section.Rows.GroupBy(row => string.Join('.', row.Check.Split('.').Where(part => !part.All(char.IsAsciiDigit))));

    private static string LineOf(string check, List<CheckRow> rows)
    {
        CheckRow worst = rows.MaxBy(row => (row.Passes ? 0 : 1, Math.Round(Math.Min(row.Used, 1e9), DecimalsOfUse)))!;
        return $"| {check} | {rows.Count} | {worst.Where} | {worst.Source} {Values(worst)}";
    }
}

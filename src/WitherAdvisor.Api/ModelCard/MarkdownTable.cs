using System.Text;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>A table in Markdown.</summary>
internal static class MarkdownTable
{
    public static string Of(IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new StringBuilder();
        Line(table, heads);
        Line(table, [.. heads.Select(_ => "---")]);
        foreach (IReadOnlyList<string> row in rows)
        {
            Line(table, row);
        }

        return table.ToString().TrimEnd();
    }

    // A formula's * and _ are no emphasis, and a bar ends a cell.
    public static string Code(string text) => $"`{text.Replace("|", "\\|", StringComparison.Ordinal)}`";

    private static void Line(StringBuilder table, IReadOnlyList<string> cells) =>
        table.Append("| ").AppendJoin(" | ", cells).Append(" |\n");
}

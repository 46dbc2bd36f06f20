using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Parquet.Serialization;

namespace WitherAdvisor.Api.Tests.KeptBefore;

/// <summary>An export read back: a row by column name.</summary>
internal static partial class ExportedCells
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> OfCsv(string csv)
    {
        string[][] lines = [.. csv.TrimEnd().Split("\r\n").Select(line => Cell().Matches(line).Select(Text).ToArray())];
        return [.. lines.Skip(1).Select(cells => lines[0].Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second, StringComparer.Ordinal))];
    }

    public static async Task<IReadOnlyList<IReadOnlyDictionary<string, string>>> OfParquet(byte[] file)
    {
        using MemoryStream stream = new(file);
        var read = await ParquetSerializer.DeserializeUntypedAsync(stream);
        return
        [
            .. read.Data.Select(row => row.ToDictionary(
                cell => cell.Key, cell => Convert.ToString(cell.Value, CultureInfo.InvariantCulture) ?? "", StringComparer.Ordinal)),
        ];
    }

    /// <summary>A line for each cell that says otherwise than then; a column that came since is no difference.</summary>
    public static IReadOnlyList<string> Differences(
        IReadOnlyList<IReadOnlyDictionary<string, string>> then, IReadOnlyList<IReadOnlyDictionary<string, string>> now) =>
        then.Count != now.Count
            ? [$"{then.Count} rows were, {now.Count} are"]
            : [.. then.Zip(now).SelectMany((pair, row) => pair.First.SelectMany(cell => Differences(row, cell, pair.Second)))];

    private static string[] Differences(int row, KeyValuePair<string, string> cell, IReadOnlyDictionary<string, string> now)
    {
        string column = Renamed.By(Renamed.Codes, cell.Key);
        string then = Renamed.By(Renamed.Codes, cell.Value);
        return now.TryGetValue(column, out string? value)
            ? then == value ? [] : [$"row {row + 1}, {column}: was {then}, is {value}"]
            : [$"row {row + 1}, {column}: the column is gone"];
    }

    private static string Text(Match cell) =>
        cell.Groups["quoted"].Success ? new StringBuilder(cell.Groups["quoted"].Value).Replace("\"\"", "\"").ToString() : cell.Groups["plain"].Value;

    [GeneratedRegex("(?:^|,)(?:\"(?<quoted>(?:[^\"]|\"\")*)\"|(?<plain>[^,]*))", RegexOptions.NonBacktracking)]
    private static partial Regex Cell();
}

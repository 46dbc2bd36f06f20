using System.Text.Json;

namespace WitherAdvisor.Mutants.Making;

/// <summary>The mutants of a report in the open mutation-testing report schema (https://github.com/stryker-mutator/mutation-testing-elements).</summary>
public static class StrykerReport
{
    private const string Library = "/src/WitherAdvisor/";

    /// <summary>All mutants that can be tried: those that were left out, or that do not compile, are not there.</summary>
    public static IReadOnlyList<Mutant> Read(string path)
    {
        using JsonDocument report = JsonDocument.Parse(File.ReadAllBytes(path));
        return [.. report.RootElement.GetProperty("files").EnumerateObject().SelectMany(MutantsOf)];
    }

    private static IEnumerable<Mutant> MutantsOf(JsonProperty file)
    {
        string name = file.Name[(file.Name.IndexOf(Library, StringComparison.Ordinal) + Library.Length)..];
        string[] lines = file.Value.GetProperty("source").GetString()!.Split('\n');
        return [.. file.Value.GetProperty("mutants").EnumerateArray().Where(CanBeTried).Select(mutant => Of(mutant, name, lines))];
    }

    private static bool CanBeTried(JsonElement mutant) => mutant.GetProperty("status").GetString() is not ("Ignored" or "CompileError");

    private static Mutant Of(JsonElement mutant, string file, string[] lines)
    {
        JsonElement place = mutant.GetProperty("location");
        return new Mutant(
            int.Parse(mutant.GetProperty("id").GetString()!),
            file,
            place.GetProperty("start").GetProperty("line").GetInt32(),
            place.GetProperty("start").GetProperty("column").GetInt32(),
            OneLine(Cut(lines, place.GetProperty("start"), place.GetProperty("end"))),
            OneLine(mutant.GetProperty("replacement").GetString()!));
    }

    private static string Cut(string[] lines, JsonElement start, JsonElement end)
    {
        (int firstLine, int firstColumn) = Position(start);
        (int lastLine, int lastColumn) = Position(end);
        if (firstLine == lastLine)
        {
            return lines[firstLine][firstColumn..lastColumn];
        }

        return string.Join(' ', [lines[firstLine][firstColumn..], .. lines[(firstLine + 1)..lastLine], lines[lastLine][..lastColumn]]);
    }

    private static (int Line, int Column) Position(JsonElement place) =>
        (place.GetProperty("line").GetInt32() - 1, place.GetProperty("column").GetInt32() - 1);

    private static string OneLine(string code) => string.Join(' ', code.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}

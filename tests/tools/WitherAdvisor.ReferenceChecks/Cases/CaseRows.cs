using System.Globalization;
using System.Text.Json;
using CsvHelper;

namespace WitherAdvisor.ReferenceChecks.Cases;

/// <summary>The rows of a file of cases, by column; of JSON by the path of each value, parts joined by dots.</summary>
internal static class CaseRows
{
    public static IEnumerable<Inputs> Read(CaseFile file)
    {
        string path = RepositoryFiles.InRoot(file.Folder, file.Data);
        return path.EndsWith(".json", StringComparison.Ordinal) ? FromJson(path) : FromCsv(path);
    }

    private static List<Inputs> FromCsv(string path)
    {
        using var csv = new CsvReader(new StreamReader(path), CultureInfo.InvariantCulture);
        csv.Read();
        csv.ReadHeader();
        string[] names = csv.HeaderRecord ?? throw new InvalidDataException($"{path} has no header");
        var rows = new List<Inputs>();
        while (csv.Read())
        {
            rows.Add(new(names.ToDictionary(name => name, name => csv.GetField(name)!, StringComparer.Ordinal)));
        }

        return rows;
    }

    private static List<Inputs> FromJson(string path)
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllBytes(path));
        return [.. document.RootElement.GetProperty("cases").EnumerateArray().Select(Flat)];
    }

    private static Inputs Flat(JsonElement element)
    {
        var cells = new Dictionary<string, string>(StringComparer.Ordinal);
        Add(cells, "", element);
        return new(cells);
    }

    private static void Add(Dictionary<string, string> cells, string path, JsonElement element)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (JsonProperty property in element.EnumerateObject())
                {
                    Add(cells, Join(path, property.Name), property.Value);
                }

                break;
            case JsonValueKind.Array:
                foreach ((int i, JsonElement item) in element.EnumerateArray().Index())
                {
                    Add(cells, Join(path, i.ToString(CultureInfo.InvariantCulture)), item);
                }

                break;
            default:
                cells.Add(path, element.ToString());
                break;
        }
    }

    private static string Join(string path, string name) => path.Length == 0 ? name : $"{path}.{name}";
}

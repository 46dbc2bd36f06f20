using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace WitherAdvisor.InventedEstate;

/// <summary>Everything that is written, by file name.</summary>
public static class EstateFiles
{
    public const ulong Seed = 20_260_605;

    // The relaxed encoder leaves the + of an offset readable.
    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static IReadOnlyDictionary<string, string> Make(ulong seed)
    {
        Dictionary<string, Stretch> stretches = new(StringComparer.Ordinal)
        {
            ["wet-spell"] = WetSpell.Make(seed),
            ["dry-windy-spell"] = DryWindySpell.Make(seed + 1),
        };
        SortedDictionary<string, string> files = new(StringComparer.Ordinal)
        {
            ["site.json"] = Json(Estate.Site()),
            ["troughs.json"] = Json(Estate.Troughs()),
            ["batches.json"] = Json(new JsonArray([.. DemoBatch.All.Select(batch => batch.ToJson())])),
        };
        foreach ((string name, Stretch stretch) in stretches)
        {
            files[$"{name}.csv"] = WeatherFiles.Csv(stretch.Hours.Where(hour => hour.Time <= LastReading(name)));
            files[$"{name}-rain-totals.json"] = Json(WeatherFiles.RainTotals(stretch));
        }

        foreach (DemoBatch batch in DemoBatch.All)
        {
            files[batch.ForecastFile] = WeatherFiles.Csv(batch.Forecast(stretches[batch.Stretch]));
        }

        return files;
    }

    /// <summary>Readings end when the last batch of their stretch is loaded.</summary>
    private static DateTimeOffset LastReading(string stretch) =>
        DemoBatch.All.Where(batch => batch.Stretch == stretch).Max(batch => batch.LoadedAt);

    private static string Json(JsonNode node) => node.ToJsonString(Indented) + "\n";
}

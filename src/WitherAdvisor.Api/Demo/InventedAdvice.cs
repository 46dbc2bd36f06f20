using System.Text.Json;
using System.Text.Json.Nodes;
using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Demo;

/// <summary>What the invented estate would send to be advised on one of its batches, without a database.</summary>
internal static class InventedAdvice
{
    public static StatelessAdviceRequest Input(string batchId)
    {
        JsonNode entry = Entry("batches.json", batchId);
        BatchRequest batch = InventedFiles.Request<BatchRequest>(entry["batch"]!, "trough");
        string trough = entry["batch"]!["trough"]!.GetValue<string>();
        return new()
        {
            Site = InventedFiles.Request<SiteRequest>(InventedFiles.Read("site.json"), "id"),
            Trough = InventedFiles.Request<TroughRequest>(Entry("troughs.json", trough), "id", "site"),
            Batch = batch,
            // What was read after loading is not for this batch to know.
            Weather = [.. InventedFiles.Readings(entry["readings"]!.GetValue<string>()).Where(reading => reading.Time <= batch.LoadedAt)],
            RainTotals = InventedFiles.Read(entry["rain_totals"]!.GetValue<string>()).Deserialize<List<GaugedRainRequest>>(JsonRules.Request),
            Forecast = InventedFiles.Readings(entry["forecast"]!.GetValue<string>()),
        };
    }

    private static JsonNode Entry(string file, string id) =>
        InventedFiles.Read(file).AsArray().Single(entry => entry!["id"]!.GetValue<string>() == id)!;
}

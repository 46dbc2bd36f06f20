using System.Globalization;
using System.Text.Json;
using WitherAdvisor.Advice;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Sites;

namespace WitherAdvisor.InventedEstate;

/// <summary>Reads a batch of the invented estate, with all its weather, as the advisor is asked for it.</summary>
public static class EstateRequest
{
    private const double PaPerHpa = 100;

    /// <summary>Ids of the batches in a folder that <see cref="EstateFiles"/> was written to.</summary>
    public static IReadOnlyList<string> BatchIds(string folder) => [.. Batches(folder).Select(batch => Text(batch, "id"))];

    /// <summary>The request for one of them, default coefficients.</summary>
    public static AdviceRequest Read(string folder, string batchId)
    {
        JsonElement demo = Batches(folder).Single(batch => Text(batch, "id") == batchId);
        JsonElement batch = demo.GetProperty("batch");
        return new(
            ReadSite(folder),
            ReadTrough(folder, Text(batch, "trough")),
            ReadBatch(batch),
            ReadWeather(folder, Text(demo, "readings")),
            ReadRainTotals(folder, Text(demo, "rain_totals")),
            ReadWeather(folder, Text(demo, "forecast")),
            new WitherCoefficients());
    }

    private static Site ReadSite(string folder)
    {
        JsonElement site = Json(folder, "site.json");
        return new(
            Number(site, "elevation_m"), Number(site, "latitude_deg"), Number(site, "longitude_deg"), Number(site, "hot_air_c"),
            Text(site.GetProperty("style"), "name") == WitherStyle.Short.Name ? WitherStyle.Short : WitherStyle.Long);
    }

    private static Trough ReadTrough(string folder, string id)
    {
        JsonElement trough = Json(folder, "troughs.json").EnumerateArray().Single(one => Text(one, "id") == id);
        return new(
            Number(trough, "area_m2"), Number(trough, "airflow_m3_per_s_per_m2"),
            Number(trough, "slowest_fan_share_percent") / 100, Number(trough, "most_load_kg_per_m2"));
    }

    private static Batch ReadBatch(JsonElement batch)
    {
        JsonElement label = batch.GetProperty("label");
        return new(
            new(
                Text(label, "division"), Text(label, "field"), Text(label, "cultivar"),
                Enum.Parse<BushAge>(Text(label, "bush_age"), ignoreCase: true),
                Enum.Parse<LeafStandard>(Text(label, "leaf_standard"), ignoreCase: true)),
            Instant(batch, "plucked_from"),
            Instant(batch, "plucked_to"),
            Instant(batch, "loaded_at"),
            Number(batch, "green_weight_kg"),
            ReadyBy: Instant(batch, "ready_by"));
    }

    private static List<WeatherReading> ReadWeather(string folder, string file) =>
        [.. File.ReadLines(Path.Combine(folder, file)).Skip(1).Select(line => Reading(line.Split(',')))];

    private static WeatherReading Reading(string[] cells) => new(
        DateTimeOffset.Parse(cells[0], CultureInfo.InvariantCulture),
        DryBulbC: Number(cells[1]),
        DewPointC: Number(cells[2]),
        RainMm: Number(cells[3]),
        WindMPerS: Number(cells[4]),
        StationPressurePa: Number(cells[5]) * PaPerHpa,
        ShortwaveWPerM2: Number(cells[6]));

    private static List<RainTotal> ReadRainTotals(string folder, string file) =>
        [.. Json(folder, file).EnumerateArray()
            .Select(total => new RainTotal(Instant(total, "from"), Instant(total, "to"), Number(total, "rain_mm")))];

    private static JsonElement[] Batches(string folder) => [.. Json(folder, "batches.json").EnumerateArray()];

    private static JsonElement Json(string folder, string file) =>
        JsonElement.Parse(File.ReadAllBytes(Path.Combine(folder, file)));

    private static string Text(JsonElement of, string name) => of.GetProperty(name).GetString()!;

    private static double Number(JsonElement of, string name) => of.GetProperty(name).GetDouble();

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);

    private static DateTimeOffset Instant(JsonElement of, string name) => of.GetProperty(name).GetDateTimeOffset();
}

using System.Text.Json.Nodes;

namespace WitherAdvisor.Api.Tests.Testing;

/// <summary>Small valid bodies, invented.</summary>
internal static class Bodies
{
    public static JsonObject Site() => Parse("""
        {"name": "Invented Hill", "elevation_m": 1500, "latitude_deg": 7, "longitude_deg": 80.7, "time_zone": "Asia/Colombo"}
        """);

    public static JsonObject Trough() => Parse("""{"name": "Trough 1", "area_m2": 42}""");

    public static JsonObject Batch() => Parse("""
        {
          "label": {"division": "Upper", "field": "Field 7", "cultivar": "Clone A", "bush_age": "mature", "leaf_standard": "fine"},
          "plucked_from": "2026-03-01T07:00:00+05:30", "plucked_to": "2026-03-01T11:30:00+05:30",
          "loaded_at": "2026-03-01T13:00:00+05:30", "green_weight_kg": 1176
        }
        """);

    public static JsonObject BatchOn(string trough)
    {
        JsonObject batch = Batch();
        batch["trough"] = trough;
        return batch;
    }

    /// <summary>Hourly readings of an even day, the last of them at the time given.</summary>
    public static JsonArray Readings(DateTimeOffset last, int hours) =>
    [
        .. Enumerable.Range(0, hours).Select(hour => new JsonObject
        {
            ["time"] = last.AddHours(hour - hours + 1).ToString("yyyy-MM-ddTHH:mm:sszzz"),
            ["dry_bulb_c"] = 19,
            ["relative_humidity_percent"] = 82,
            ["rain_mm"] = 0,
            ["wind_m_per_s"] = 1.5,
        }),
    ];

    public static JsonObject Advice()
    {
        DateTimeOffset loadedAt = DateTimeOffset.Parse("2026-03-01T13:00:00+05:30");
        return new JsonObject
        {
            ["site"] = Site(),
            ["trough"] = Trough(),
            ["batch"] = Batch(),
            ["weather"] = Readings(loadedAt, 24 * 8),
            ["forecast"] = Readings(loadedAt.AddHours(24), 24),
        };
    }

    public static JsonObject Simulation() => new()
    {
        ["site"] = Site(),
        ["trough"] = Trough(),
        ["green_weight_kg"] = 1176,
        ["leaf"] = Parse("""{"tissue_moisture_wet_basis_percent": 78, "surface_water_kg_per_kg": 0.2}"""),
        ["loaded_at"] = "2026-03-01T13:00:00+05:30",
        ["air"] = Readings(DateTimeOffset.Parse("2026-03-01T13:00:00+05:30"), 1),
        ["stages"] = new JsonArray(Parse("""{"to_hour": 12, "plenum_dry_bulb_c": 26.5}""")),
        ["turn_hours"] = new JsonArray(2, 4, 6, 8, 10),
    };

    private static JsonObject Parse(string json) => JsonNode.Parse(json)!.AsObject();
}

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

    /// <summary>Hourly readings of an even day, the last of them at the time given; a thermometer that does not move at all would be told as stuck.</summary>
    public static JsonArray Readings(DateTimeOffset last, int hours) =>
    [
        .. Enumerable.Range(0, hours).Select(hour => new JsonObject
        {
            ["time"] = last.AddHours(hour - hours + 1).ToString("yyyy-MM-ddTHH:mm:sszzz"),
            ["dry_bulb_c"] = 19 + (hours - 1 - hour) % 2 / 10.0,
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

    public static JsonArray Scales() =>
    [
        Parse("""{"name": "Briskness", "least_mark": 0, "most_mark": 10}"""),
        Parse("""{"name": "Colour", "least_mark": -5, "most_mark": 5}"""),
    ];

    /// <summary>Everything that can be said of a batch of ten hours, and nothing odd in it.</summary>
    public static JsonObject Outcome() => Parse("""
        {
          "air_set": [{"from_hour": 0, "dry_bulb_c": 26.5, "hygrometric_difference_k": 7.2, "fan_share_percent": 100}, {"from_hour": 3, "dry_bulb_c": 25}],
          "air_measured": [{"from_hour": 1, "dry_bulb_c": 26.1, "wet_bulb_c": 19.2}],
          "turns": 2, "turned_at_hours": [3, 6.5], "withered_weight_kg": 560, "oven_moisture_wet_basis_percent": 60.2,
          "layers": {"bottom_moisture_wet_basis_percent": 58.5, "middle_moisture_wet_basis_percent": 60, "top_moisture_wet_basis_percent": 61.5},
          "sample_weighings": [{"hour": 4, "weight_percent": 78}], "verdict": "right", "evenness": "even",
          "marks": [{"scale": "Briskness", "mark": 7.5}, {"scale": "Colour", "mark": -1}],
          "faults": ["red leaf on top"], "weather": "wet", "note": "fan off for ten minutes", "entered_by": "night maker"
        }
        """);

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

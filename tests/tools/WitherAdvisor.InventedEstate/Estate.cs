using System.Text.Json.Nodes;

namespace WitherAdvisor.InventedEstate;

/// <summary>The invented estate itself. No such place exists.</summary>
public static class Estate
{
    private const string SiteId = "invented-hill";

    /// <summary>Its zone has had one offset since 2006.</summary>
    public const string TimeZone = "Asia/Colombo";

    public static readonly TimeSpan Offset = new(5, 30, 0);

    public static JsonObject Site() => new()
    {
        ["id"] = SiteId,
        ["name"] = "Invented Hill factory (no real place)",
        ["elevation_m"] = 1500,
        ["latitude_deg"] = 7.0,
        ["longitude_deg"] = 80.7,
        ["time_zone"] = TimeZone,
        ["hot_air_c"] = 52.8,
        ["style"] = new JsonObject { ["name"] = "short" },
    };

    public static JsonArray Troughs() =>
    [
        Trough("trough-1", "Trough 1", 41.2, 60),
        Trough("trough-2", "Trough 2", 41.2, 60),
        Trough("trough-3", "Trough 3", 32.9, 100),
    ];

    private static JsonObject Trough(string id, string name, double areaM2, int slowestFanSharePercent) => new()
    {
        ["id"] = id,
        ["site"] = SiteId,
        ["name"] = name,
        ["area_m2"] = areaM2,
        ["airflow_m3_per_s_per_m2"] = 0.2286,
        ["slowest_fan_share_percent"] = slowestFanSharePercent,
        ["most_load_kg_per_m2"] = 35,
    };
}

using System.Text.Json.Nodes;

namespace WitherAdvisor.Loft.Records;

/// <summary>
/// Members and codes of kept JSON that have another name by now, of records in the domain's own form and of reports.
/// What is kept is never rewritten: it is read under today's names.
/// </summary>
public static class FormerNames
{
    private static readonly Dictionary<string, string> Members = new()
    {
        ["leaf_area_m2_per_kg_dry"] = "specific_leaf_area_m2_per_kg_dry",
        ["boundary_conductance_m_per_s"] = "boundary_layer_conductance_m_per_s",
        ["skin_conductance_m_per_s"] = "cuticular_conductance_m_per_s",
        ["boundary_conductance"] = "boundary_layer_conductance",
        ["skin_conductance"] = "cuticular_conductance",
        ["skin_conductance_fraction"] = "cuticular_conductance_fraction",
        ["skin_conductance_low_fraction"] = "cuticular_conductance_low_fraction",
        ["skin_conductance_high_fraction"] = "cuticular_conductance_high_fraction",
        ["hardly_told_apart"] = "confounded",
        ["told"] = "identifiability",
        ["tells_humidity"] = "has_humidity",
    };

    private static readonly Dictionary<string, string> Codes = new()
    {
        ["foretold_taken"] = "forecast_used",
        ["air_not_foretold"] = "air_not_forecast",
        ["forecast_moved"] = "forecast_bias_corrected",
        ["boundary_conductance_mm_per_s"] = "boundary_layer_conductance_mm_per_s",
        ["skin_conductance_mm_per_s"] = "cuticular_conductance_mm_per_s",
        ["told"] = "identified",
        ["not_told"] = "not_identified",
    };

    /// <summary>Where a code may stand; elsewhere the same letters are somebody's text.</summary>
    private static readonly HashSet<string> MembersOfCodes = ["code", "name", "first", "second", "told"];

    private static readonly string[] All = [.. Members.Keys.Concat(Codes.Keys).Select(name => $"\"{name}\"")];

    /// <summary>Kept JSON under today's names; the very text where it has no others.</summary>
    /// <exception cref="System.Text.Json.JsonException">It is no JSON.</exception>
    public static string Now(string kept) =>
        All.Any(name => kept.Contains(name, StringComparison.Ordinal)) ? Renamed(JsonNode.Parse(kept))!.ToJsonString() : kept;

    /// <summary>What a code is called now.</summary>
    public static string Code(string kept) => Codes.GetValueOrDefault(kept, kept);

    private static JsonNode? Renamed(JsonNode? node) => node switch
    {
        JsonObject members => new JsonObject(members.Select(member =>
            KeyValuePair.Create(Members.GetValueOrDefault(member.Key, member.Key), Renamed(member.Key, member.Value)))),
        JsonArray items => new JsonArray([.. items.Select(Renamed)]),
        null => null,
        _ => node.DeepClone(),
    };

    private static JsonNode? Renamed(string member, JsonNode? node) =>
        node is JsonValue value && MembersOfCodes.Contains(member) && value.TryGetValue(out string? code) ? Code(code) : Renamed(node);
}

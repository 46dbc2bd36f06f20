using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;

namespace WitherAdvisor.Loft.Coefficients;

/// <summary>
/// A site's set as text that is kept for ever. Its names and units are its own: neither a property of the domain nor a
/// field of a request that gets another name changes what is kept.
/// </summary>
public static class SetRecord
{
    /// <summary>
    /// The first and only one so far. Records written before it was written down say none and are of it; one that takes
    /// a name or a unit away has to be another, with a reader of its own beside this.
    /// </summary>
    private const int Format = 1;

    /// <summary>Of sets that were stated without a name.</summary>
    private const string Unnamed = "inline";

    // Values only, so that 0.006 m/s is kept as 6 mm/s; spreads are learned and have more digits than anybody types.
    private const int DigitsThatCount = 12;

    // People read these lines with their own eyes; they never stand in HTML.
    private static readonly JsonSerializerOptions AsItReads = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(SiteSet set) => new JsonObject
    {
        ["format"] = Format,
        ["site"] = Write(set.Site),
        ["groups"] = new JsonArray([.. set.Groups.Select(Write)]),
    }.ToJsonString(AsItReads);

    /// <summary>What was kept, by this release or an earlier one.</summary>
    /// <exception cref="InvalidDataException">Of a format that this version does not know.</exception>
    public static SiteSet Read(string kept)
    {
        JsonNode record = JsonNode.Parse(kept)!;
        int format = (int?)record["format"] ?? Format;
        return format == Format
            ? new(ReadSet(record["site"]!), [.. record["groups"]!.AsArray().Select(group => ReadGroup(group!))])
            : throw new InvalidDataException($"The coefficient set is kept in format {format}, which a newer version wrote; this one reads format {Format}.");
    }

    private static JsonNode Write(GroupSet group) => new JsonObject
    {
        ["cultivar"] = group.Cultivar,
        ["leaf_standard"] = group.Standard is { } standard ? JsonNamingPolicy.SnakeCaseLower.ConvertName(standard.ToString()) : null,
        ["coefficients"] = Write(group.Coefficients),
    };

    private static JsonObject Write(WitherCoefficients set)
    {
        JsonObject record = Write(SetNumber.Values, value => Math.Round(value, DigitsThatCount), set);
        record["set_name"] = set.SetName;
        record["spreads"] = Write(SetNumber.Spreads, spread => spread, set);
        return record;
    }

    private static JsonObject Write(IEnumerable<SetNumber> numbers, Func<double, double> shown, WitherCoefficients set) =>
        new(numbers.Select(number => KeyValuePair.Create(number.Name, (JsonNode?)shown(number.Of(set) * number.PerDomain))));

    private static GroupSet ReadGroup(JsonNode group) =>
        new((string?)group["cultivar"], ReadStandard((string?)group["leaf_standard"]), ReadSet(group["coefficients"]!));

    private static LeafStandard? ReadStandard(string? word) => word is null
        ? null
        : Enum.GetValues<LeafStandard>().Single(one => JsonNamingPolicy.SnakeCaseLower.ConvertName(one.ToString()) == word);

    private static WitherCoefficients ReadSet(JsonNode record)
    {
        WitherCoefficients set = new() { SetName = (string?)record["set_name"] ?? Unnamed };
        set = Read(SetNumber.Values, record, set);
        return record["spreads"] is { } spreads ? Read(SetNumber.Spreads, spreads, set) : set;
    }

    /// <summary>What the record does not state stays as it is.</summary>
    private static WitherCoefficients Read(IEnumerable<SetNumber> numbers, JsonNode record, WitherCoefficients set) => numbers.Aggregate(
        set, (so, number) => record[number.Name] is { } value ? number.With(so, (double)value / number.PerDomain) : so);
}

using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Loft.Records;

/// <summary>How records are written: the domain's own names in snake_case, every digit, nothing that follows from the rest.</summary>
internal static class RecordJson
{
    public static JsonSerializerOptions Options { get; } = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        IgnoreReadOnlyProperties = true,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        TypeInfoResolver = ClosedFamilyJson.Resolver(typeof(Assumption)).WithAddedModifier(LeaveOutWhatNobodyRead),
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.SnakeCaseLower, allowIntegerValues: false) },
    };

    public static string Write<T>(T value) => JsonSerializer.Serialize(value, Options);

    /// <summary>Reads a value back.</summary>
    /// <exception cref="JsonException">It is not the JSON of such a value.</exception>
    public static T Read<T>(string json) =>
        JsonSerializer.Deserialize<T>(json, Options) ?? throw new JsonException("null");

    /// <summary>Thousands of readings tell a value or two each; elsewhere what is unknown is written as null.</summary>
    private static void LeaveOutWhatNobodyRead(JsonTypeInfo type)
    {
        if (type.Type == typeof(WeatherReading))
        {
            // What follows from the rest has no setter, and would be written if it were asked for; records of before have it.
            foreach (JsonPropertyInfo property in type.Properties.Where(property => property.Set is not null))
            {
                property.ShouldSerialize = (_, value) => value is not null;
            }
        }
    }
}

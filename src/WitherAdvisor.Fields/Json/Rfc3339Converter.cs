using System.Text.Json;
using System.Text.Json.Serialization;

namespace WitherAdvisor.Fields.Json;

/// <summary>Instants in JSON: a time without seconds or offset is refused.</summary>
internal sealed class Rfc3339Converter : JsonConverter<DateTimeOffset>
{
    public override DateTimeOffset Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Rfc3339.Parse(reader.GetString() ?? "") ?? throw new JsonException();

    public override void Write(Utf8JsonWriter writer, DateTimeOffset value, JsonSerializerOptions options) =>
        writer.WriteStringValue(Rfc3339.Format(value));
}

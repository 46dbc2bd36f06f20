using System.Text.Json;
using System.Text.Json.Serialization;

namespace WitherAdvisor.Api.Http;

/// <summary>Writes JSON that was kept as text, not a byte changed.</summary>
internal sealed class KeptJsonConverter : JsonConverter<string>
{
    public override string Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException("Kept JSON is only written.");

    public override void Write(Utf8JsonWriter writer, string value, JsonSerializerOptions options) =>
        writer.WriteRawValue(value, skipInputValidation: true);
}

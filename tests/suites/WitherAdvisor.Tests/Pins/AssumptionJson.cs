using System.Text.Json;
using System.Text.Json.Serialization;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Tests.Pins;

/// <summary>Writes an assumption with the numbers of its own case.</summary>
internal sealed class AssumptionJson : JsonConverter<Assumption>
{
    public override Assumption Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        throw new NotSupportedException("Pins are only compared.");

    public override void Write(Utf8JsonWriter writer, Assumption value, JsonSerializerOptions options) =>
        JsonSerializer.Serialize(writer, value, value.GetType(), options);
}

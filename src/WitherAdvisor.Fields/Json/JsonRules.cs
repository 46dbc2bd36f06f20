using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace WitherAdvisor.Fields.Json;

/// <summary>How JSON is read and written, the same everywhere: snake_case, strict, times by RFC 3339.</summary>
internal static class JsonRules
{
    public const int DeepestNesting = 16;

    /// <summary>For answers: what is unknown is written as null.</summary>
    public static JsonSerializerOptions Response { get; } = Apply(new JsonSerializerOptions());

    /// <summary>For requests, read and kept: what was not given is left out.</summary>
    public static JsonSerializerOptions Request { get; } = Apply(new JsonSerializerOptions
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    });

    public static JsonSerializerOptions Apply(JsonSerializerOptions options)
    {
        options.PropertyNameCaseInsensitive = false;
        options.PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower;
        options.NumberHandling = JsonNumberHandling.Strict;
        options.UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow;
        options.AllowDuplicateProperties = false;
        options.RespectNullableAnnotations = true;
        options.RespectRequiredConstructorParameters = true;
        options.MaxDepth = DeepestNesting;
        // Unsafe only inside HTML, where no JSON of this service stands; people read °C and quotes as they are.
        options.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        options.Converters.Add(new Rfc3339Converter());
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.SnakeCaseLower, allowIntegerValues: false));
        options.TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { ComputedNumbers.Round } };
        return options;
    }
}

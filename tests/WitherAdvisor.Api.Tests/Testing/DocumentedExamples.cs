using System.Text.Json.Nodes;

namespace WitherAdvisor.Api.Tests.Testing;

/// <summary>Bodies put together from the examples of the served OpenAPI document, so that those are tried too.</summary>
internal static class DocumentedExamples
{
    /// <summary>Fields that may not stand beside another one.</summary>
    private static readonly HashSet<string> Alternatives = ["hygrometric_difference_k"];

    public static JsonNode Of(JsonNode document, RequestForm form)
    {
        JsonNode body = form.Input.IsGenericType
            ? new JsonArray(OfSchema(document, form.Input.GetGenericArguments()[0].Name))
            : OfSchema(document, form.Input.Name);
        if (body is JsonObject whole && whole["forecast"]?[0] is { } forecast)
        {
            // The example of a reading is of the morning before loading.
            forecast["time"] = "2026-03-01T18:00:00+05:30";
        }

        return body;
    }

    private static JsonObject OfSchema(JsonNode document, string name)
    {
        JsonObject body = [];
        foreach ((string field, JsonNode? schema) in document["components"]!["schemas"]![name]!["properties"]!.AsObject())
        {
            if (!Alternatives.Contains(field) && OfField(document, schema!) is { } value)
            {
                body[field] = value;
            }
        }

        return body;
    }

    private static JsonNode? OfField(JsonNode document, JsonNode schema)
    {
        if (schema["examples"] is { } examples)
        {
            return examples[0]!.DeepClone();
        }

        if (schema["items"] is { } items)
        {
            return OfField(document, items) is { } item ? new JsonArray(item) : null;
        }

        JsonNode? reference = schema["$ref"] ?? schema["allOf"]?[0]?["$ref"] ?? schema["anyOf"]?[1]?["$ref"];
        return reference is null ? null : OfSchema(document, ((string)reference!).Split('/')[^1]);
    }
}

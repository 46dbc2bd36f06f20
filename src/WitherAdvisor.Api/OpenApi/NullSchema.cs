using Microsoft.OpenApi;

namespace WitherAdvisor.Api.OpenApi;

/// <summary>Says "or null" in the way JSON Schema understands; what the generator writes by itself matches nothing.</summary>
internal static class NullSchema
{
    public static void Allow(OpenApiSchema field)
    {
        if (field.Type is not { } type || !type.HasFlag(JsonSchemaType.Null))
        {
            return;
        }

        if (field.AllOf is { Count: > 0 } others)
        {
            field.AnyOf = [new OpenApiSchema { Type = JsonSchemaType.Null }, .. others];
            field.AllOf = null;
            field.Type = null;
        }

        if (field.Enum is { Count: > 0 } names)
        {
            names.Add(JsonNullSentinel.JsonNull);
        }
    }
}

using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.OpenApi;

/// <summary>Writes into the schema of each field its unit and, for requests, what the check of them goes by.</summary>
internal sealed class FieldFilter : ISchemaFilter
{
    private static readonly string[] RequestEndings = ["Request", "Query"];

    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema field || context.MemberInfo is not PropertyInfo property)
        {
            return;
        }

        WriteUnit(field, property);
        if (RequestEndings.Any(ending => property.DeclaringType!.Name.EndsWith(ending, StringComparison.Ordinal)))
        {
            ShapeSchema.Write(field, Shapes.Of(property).Shape);
        }

        if (property.GetCustomAttribute<ShownAsAttribute>() is { } shown)
        {
            field.Type = null;
            field.AllOf = [context.SchemaGenerator.GenerateSchema(shown.Type, context.SchemaRepository)];
        }

        NullSchema.Allow(field);
    }

    private static void WriteUnit(OpenApiSchema field, PropertyInfo property)
    {
        string name = JsonNamingPolicy.SnakeCaseLower.ConvertName(property.Name);
        if (IsNumber(property.PropertyType) && Unit.OfName(name) is { } unit)
        {
            field.Extensions ??= new Dictionary<string, IOpenApiExtension>(StringComparer.Ordinal);
            field.Extensions["x-unit"] = new JsonNodeExtension(JsonValue.Create(unit.Symbol));
        }
    }

    private static bool IsNumber(Type type) => (Nullable.GetUnderlyingType(type) ?? type) == typeof(double);
}

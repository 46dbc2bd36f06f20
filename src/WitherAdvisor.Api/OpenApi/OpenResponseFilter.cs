using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace WitherAdvisor.Api.OpenApi;

/// <summary>Requests with unknown fields are refused; answers may gain fields, and clients must not break on them.</summary>
internal sealed class OpenResponseFilter : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is OpenApiSchema whole && !context.Type.Name.EndsWith("Request", StringComparison.Ordinal))
        {
            whole.AdditionalPropertiesAllowed = true;
        }
    }
}

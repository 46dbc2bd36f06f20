using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.OpenApi;

/// <summary>Lists the query of an operation, which its handler takes as one checked argument.</summary>
internal sealed class QueryFilter : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        foreach (Type query in context.MethodInfo.GetParameters()
            .Select(parameter => parameter.ParameterType)
            .Where(type => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Query<>)))
        {
            operation.Parameters ??= [];
            foreach (FieldShape field in ((ObjectShape)Shapes.Of(query.GetGenericArguments()[0])).Fields)
            {
                operation.Parameters.Add(Parameter(field, context));
            }
        }
    }

    private static OpenApiParameter Parameter(FieldShape field, OperationFilterContext context)
    {
        IOpenApiSchema schema = context.SchemaGenerator.GenerateSchema(
            field.Property.PropertyType, context.SchemaRepository, field.Property);
        return new()
        {
            Name = field.Name,
            In = ParameterLocation.Query,
            Required = field.Required,
            Description = schema.Description,
            Schema = schema,
        };
    }
}

using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;
using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.OpenApi;

/// <summary>Says what the names in paths are.</summary>
internal sealed class PathFilter : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        foreach (OpenApiParameter parameter in (operation.Parameters ?? []).OfType<OpenApiParameter>())
        {
            Describe(parameter, (OpenApiSchema)parameter.Schema!);
        }
    }

    private static void Describe(OpenApiParameter parameter, OpenApiSchema schema)
    {
        (parameter.Description, string example, bool chosen) = parameter.Name switch
        {
            "site" => ("Id of the site, chosen by the caller.", "example-hill", true),
            "trough" => ("Id of the trough, chosen by the caller, unique within its site.", "trough-1", true),
            "batch" => ("Id of the batch, made by the service.", "0199d2b5-6f10-7c3a-9d4e-2f6a1b3c5d7e", false),
            "advice" => ("Id of the advice, made by the service.", "0199d2b5-7021-7b1c-8e5f-4a7b2c6d8e9f", false),
            "recalibration" => ("Id of the recalibration, made by the service.", "0199d2b5-8f10-7c3a-9d4e-2f6a1b3c5d7e", false),
            "name" => ("Name of the coefficient set, unique within its site.", "learned-1", true),
            _ => throw new InvalidOperationException($"Nobody has said what '{parameter.Name}' in a path is."),
        };
        parameter.Example = JsonValue.Create(example);
        if (chosen)
        {
            schema.Pattern = Slug.Pattern;
            schema.MaxLength = Slug.Longest;
        }
    }
}

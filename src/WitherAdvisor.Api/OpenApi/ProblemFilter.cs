using System.Globalization;
using Microsoft.AspNetCore.Mvc.ApiExplorer;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;
using WitherAdvisor.Api.Http;

namespace WitherAdvisor.Api.OpenApi;

/// <summary>Adds to each operation the problems that its form lets it answer with.</summary>
internal sealed class ProblemFilter : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        operation.Responses ??= [];
        IOpenApiSchema problem = context.SchemaGenerator.GenerateSchema(typeof(ProblemResponse), context.SchemaRepository);
        foreach (int status in Statuses(operation, context.ApiDescription))
        {
            operation.Responses[status.ToString(CultureInfo.InvariantCulture)] = new OpenApiResponse
            {
                Description = ReasonPhrases.GetReasonPhrase(status),
                Content = new Dictionary<string, IOpenApiMediaType>(StringComparer.Ordinal)
                {
                    ["application/problem+json"] = new OpenApiMediaType { Schema = problem },
                },
            };
        }
    }

    private static IEnumerable<int> Statuses(OpenApiOperation operation, ApiDescription route)
    {
        bool hasBody = operation.RequestBody is not null;
        bool hasParameters = operation.Parameters is { Count: > 0 };
        bool hasPath = operation.Parameters?.Any(parameter => parameter.In == ParameterLocation.Path) == true;
        bool isStrict = route.RelativePath!.StartsWith("v1/", StringComparison.Ordinal);
        return new (bool Applies, int Status)[]
        {
            (isStrict || hasBody || hasParameters, StatusCodes.Status400BadRequest),
            (!HttpMethods.IsGet(route.HttpMethod!), StatusCodes.Status403Forbidden),
            (hasPath, StatusCodes.Status404NotFound),
            (operation.Responses!.ContainsKey("409"), StatusCodes.Status409Conflict),
            (hasBody, StatusCodes.Status413PayloadTooLarge),
            (hasBody, StatusCodes.Status415UnsupportedMediaType),
            (true, StatusCodes.Status421MisdirectedRequest),
        }.Where(pair => pair.Applies).Select(pair => pair.Status);
    }
}

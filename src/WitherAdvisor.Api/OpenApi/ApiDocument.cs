using Microsoft.OpenApi;
using WitherAdvisor.Fields;
using WitherAdvisor.LogFiles.Writing;

namespace WitherAdvisor.Api.OpenApi;

/// <summary>The OpenAPI document at /openapi/v1.json and the pages to read and try it at /swagger.</summary>
internal static class ApiDocument
{
    public static void AddApiDocument(this IServiceCollection services)
    {
        services.AddEndpointsApiExplorer();
        services.AddSwaggerGen(document =>
        {
            document.SwaggerDoc("v1", Title());
            document.IncludeXmlComments(typeof(ApiDocument).Assembly);
            document.IncludeXmlComments(typeof(FieldError).Assembly);
            document.IncludeXmlComments(typeof(ExportQuery).Assembly);
            document.SupportNonNullableReferenceTypes();
            document.NonNullableReferenceTypesAsRequired();
            document.UseInlineDefinitionsForEnums();
            document.UseAllOfToExtendReferenceSchemas();
            document.SchemaFilter<FieldFilter>();
            document.SchemaFilter<OpenResponseFilter>();
            document.OperationFilter<PathFilter>();
            document.OperationFilter<QueryFilter>();
            document.OperationFilter<ProblemFilter>();
        });
    }

    public static void MapApiDocument(this WebApplication app)
    {
        app.MapSwagger(
            "/openapi/{documentName}.json",
            document => document.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1);
        app.UseSwaggerUI(pages =>
        {
            pages.SwaggerEndpoint("/openapi/v1.json", "WitherAdvisor v1");
            pages.DocumentTitle = "WitherAdvisor API";
        });
    }

    private static OpenApiInfo Title() => new()
    {
        Title = "WitherAdvisor",
        Version = "v1",
        Description = """
            Advises how to wither black-tea leaf on troughs: how much hot air, how long, when to turn, when to stop.
            The service advises; a person sets the plant.

            Every number's name ends in its unit. Temperatures are °C, differences K, moistures percent on wet basis.
            Times follow RFC 3339 with seconds and offset; those of an advice carry the site's offset and are rounded
            to the minute, those of what is kept are in UTC. Computed numbers are rounded to decimals finer than the instruments they are read on:
            two for °C, K, %, kg and h. What is unknown is null, never 0. Requests are read strictly: an unknown
            name, a number in quotes or a time without offset is refused, and the problem names field, value and range.
            """,
        License = new OpenApiLicense { Name = "MIT" },
    };
}

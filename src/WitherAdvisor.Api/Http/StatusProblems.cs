using Microsoft.AspNetCore.Diagnostics;

namespace WitherAdvisor.Api.Http;

/// <summary>Turns bare statuses (404, 405, 415) and failures into problem details.</summary>
internal static class StatusProblems
{
    public static void UseStatusProblems(this WebApplication app)
    {
        app.UseExceptionHandler(new ExceptionHandlerOptions
        {
            ExceptionHandler = WriteFailure,
            StatusCodeSelector = StatusOf,
            // A caller's mistake is not an error of the service.
            SuppressDiagnosticsCallback = failure => failure.Exception is BadHttpRequestException,
        });
        app.UseStatusCodePages(context => Write(context.HttpContext));
    }

    private static int StatusOf(Exception failure) =>
        failure is BadHttpRequestException bad ? bad.StatusCode : StatusCodes.Status500InternalServerError;

    private static Task WriteFailure(HttpContext context) => Write(context);

    private static Task Write(HttpContext context) => Of(context).ExecuteAsync(context);

    private static ProblemResult Of(HttpContext context) => context.Response.StatusCode switch
    {
        StatusCodes.Status415UnsupportedMediaType => DoorProblems.MediaType(
            context.Request.ContentType, "what the OpenAPI document names for this path: application/json, or text/csv for a table"),
        int status => Problem.OfStatus(status),
    };
}

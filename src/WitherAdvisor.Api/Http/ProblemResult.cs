using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Http;

/// <summary>Writes a problem as application/problem+json, whatever the caller accepts.</summary>
internal sealed class ProblemResult(ProblemResponse problem) : IResult
{
    public ProblemResponse Problem { get; } = problem;

    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.StatusCode = Problem.Status;
        ProblemResponse answer = Problem with { Instance = httpContext.Request.Path };
        return httpContext.Response.WriteAsJsonAsync(
            answer, JsonRules.Response, "application/problem+json", httpContext.RequestAborted);
    }
}

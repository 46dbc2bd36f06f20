namespace WitherAdvisor.Api.Http.Doors;

/// <summary>Refuses paths that stand for no text. The server leaves percent sequences that it cannot decode as they came.</summary>
internal sealed class PathDoor : IMiddleware
{
    private const char Undecodable = '\uFFFD';

    public Task InvokeAsync(HttpContext context, RequestDelegate next) =>
        IsText(context.Request.Path.Value ?? "") ? next(context) : DoorProblems.BadPath().ExecuteAsync(context);

    private static bool IsText(string path) => !path.Any(one => char.IsControl(one) || one is '%' or Undecodable);
}

namespace WitherAdvisor.Api.Http.Doors;

/// <summary>
/// Refuses requests for a host that is not this service. A web site whose name is made to point at this machine is, to the
/// browser, the same site as itself: only the name in Host tells it from a page of ours.
/// </summary>
internal sealed class HostDoor(HostNames names) : IMiddleware
{
    public Task InvokeAsync(HttpContext context, RequestDelegate next) =>
        names.Know(context.Request.Host) ? next(context) : Refusal(context.Request.Host).ExecuteAsync(context);

    private ProblemResult Refusal(HostString host) => DoorProblems.UnknownHost(
        $"Host is {Shown.Of(host.Value)}; allowed is {names.Allowed}. The operator adds names with {HostNames.Key.Replace(":", "__", StringComparison.Ordinal)}.");
}

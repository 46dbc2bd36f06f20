using Microsoft.Net.Http.Headers;

namespace WitherAdvisor.Api.Http.Doors;

/// <summary>
/// Refuses changes that a page of another site has a browser send. Browsers say where a request comes from and a page cannot
/// make them lie; what is no browser says nothing, and is nobody's unwitting hand.
/// </summary>
internal sealed class OriginDoor(OriginRule rule) : IMiddleware
{
    private const string FetchSite = "Sec-Fetch-Site";

    /// <summary>"none" is what a person typed or had bookmarked.</summary>
    private static readonly string[] OwnSites = ["same-origin", "none"];

    public Task InvokeAsync(HttpContext context, RequestDelegate next) =>
        IsRead(context.Request.Method) || Fault(context.Request) is not { } fault
            ? next(context)
            : DoorProblems.ForeignOrigin(fault).ExecuteAsync(context);

    private static bool IsRead(string method) =>
        HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || HttpMethods.IsOptions(method);

    private string? Fault(HttpRequest request)
    {
        IHeaderDictionary headers = request.Headers;
        if (headers.TryGetValue(FetchSite, out var site) && !OwnSites.Contains(site.ToString(), StringComparer.Ordinal))
        {
            return $"{FetchSite} is {Shown.Of(site)}; allowed is {string.Join(" or ", OwnSites)}.";
        }

        return headers.TryGetValue(HeaderNames.Origin, out var origin) && !rule.Know(origin.ToString(), request)
            ? $"{HeaderNames.Origin} is {Shown.Of(origin)}; allowed is {rule.Allowed(request)}."
            : null;
    }
}

namespace WitherAdvisor.Api.Pages;

/// <summary>What every page tells the browser: run nothing, load nothing but the style sheet, send forms nowhere else, keep no copy.</summary>
internal static class PageHeaders
{
    private const string Policy =
        "default-src 'none'; style-src 'self'; img-src data:; form-action 'self'; frame-ancestors 'none'; base-uri 'none'";

    public static ValueTask<object?> Set(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        IHeaderDictionary headers = context.HttpContext.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.CacheControl = "no-cache, no-store";
        headers.Pragma = "no-cache";
        return next(context);
    }
}

namespace WitherAdvisor.Api.Http.Doors;

/// <summary>What every answer tells the browser: guess at no type, show it in no frame, hand it to no other site.</summary>
internal static class ResponseHeaders
{
    private const string NoFrames = "frame-ancestors 'none'";

    public static Task Set(HttpContext context, RequestDelegate next)
    {
        // When the answer starts, so that what clears it after a failure leaves these.
        context.Response.OnStarting(() =>
        {
            Add(context.Response.Headers);
            return Task.CompletedTask;
        });
        return next(context);
    }

    private static void Add(IHeaderDictionary headers)
    {
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        // A page's own policy says this and more.
        headers.TryAdd("Content-Security-Policy", NoFrames);
    }
}

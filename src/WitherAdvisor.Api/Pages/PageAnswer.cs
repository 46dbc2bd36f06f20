using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;

namespace WitherAdvisor.Api.Pages;

/// <summary>Answers of pages.</summary>
internal static class PageAnswer
{
    public static RazorComponentResult Of<T>(object parameters, int status = StatusCodes.Status200OK)
        where T : IComponent =>
        new(typeof(T), parameters) { StatusCode = status, PreventStreamingRendering = true };

    /// <summary>There is no such site, batch or trough.</summary>
    public static RazorComponentResult Unknown(string noun, PageContext page) => Message(
        $"No such {noun}", $"The address names a {noun} that is not kept here.", page, StatusCodes.Status404NotFound);

    public static RazorComponentResult Message(string title, string message, PageContext page, int status) =>
        Of<MessagePage>(new { Title = title, Message = message, Page = page }, status);

    /// <summary>After a form was taken: go and look, so that pressing "reload" does not send it again.</summary>
    public static IResult SeeOther(HttpContext http, string address)
    {
        http.Response.Headers.Location = address;
        return TypedResults.StatusCode(StatusCodes.Status303SeeOther);
    }

    /// <summary>What a page is drawn with, for whoever asks now.</summary>
    public static PageContext Context(HttpContext http, TimeProvider clock) =>
        new(UnitChoice.Read(http), http.Request.Path.ToUriComponent(), clock.GetUtcNow());
}

using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Pages;

/// <summary>Answers of pages.</summary>
internal static class PageAnswer
{
    public static RazorComponentResult Of<T>(object parameters, int status = StatusCodes.Status200OK)
        where T : IComponent =>
        new(typeof(T), parameters) { StatusCode = status, PreventStreamingRendering = true };

    /// <summary>There is no such site, batch or trough.</summary>
    public static RazorComponentResult Unknown(string noun, PageContext page) => Message(
        page.Words[$"unknown.{noun}.title"], page.Words[$"unknown.{noun}.text"], page, StatusCodes.Status404NotFound);

    /// <summary>A form from a page that this service did not draw for this browser.</summary>
    public static RazorComponentResult Stale(PageContext page) =>
        Message(page.Words["form.stale.title"], page.Words["form.stale.text"], page, StatusCodes.Status400BadRequest);

    /// <summary>Something that was asked for was not done.</summary>
    public static RazorComponentResult Unchanged(string why, PageContext page, int status, string? language = null) =>
        Message(page.Words["form.unchanged"], why, page, status, language);

    /// <summary>The interface refused it, and says why in its own language.</summary>
    public static RazorComponentResult Unchanged(ProblemResponse refusal, PageContext page) =>
        Unchanged(refusal.Detail ?? refusal.Title, page, refusal.Status, Wordbook.English.Tag);

    public static RazorComponentResult Message(string title, string message, PageContext page, int status, string? language = null) =>
        Of<MessagePage>(new { Title = title, Message = message, MessageLanguage = language, Page = page }, status);

    /// <summary>After a form was taken: go and look, so that pressing "reload" does not send it again.</summary>
    public static IResult SeeOther(HttpContext http, string address)
    {
        http.Response.Headers.Location = address;
        return TypedResults.StatusCode(StatusCodes.Status303SeeOther);
    }

    /// <summary>What a page is drawn with, for whoever asks now.</summary>
    public static PageContext Context(HttpContext http, TimeProvider clock) =>
        new(UnitChoice.Read(http), http.RequestServices.GetRequiredService<Wordbook>(), http.Request.Path.ToUriComponent(), clock.GetUtcNow());
}

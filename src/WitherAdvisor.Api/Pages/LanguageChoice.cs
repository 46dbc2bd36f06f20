using Microsoft.Net.Http.Headers;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Pages;

/// <summary>A person's language: in the address when they choose it, in a cookie from then on, else the browser's.</summary>
internal static class LanguageChoice
{
    public const string Name = "language";

    public static void AddLanguages(this IServiceCollection services)
    {
        services.AddHttpContextAccessor();
        services.AddSingleton(Wordbooks.Embedded);
        services.AddScoped(scope => scope.GetRequiredService<IHttpContextAccessor>().HttpContext is { } http
            ? Read(http, scope.GetRequiredService<Wordbooks>())
            : Wordbook.English);
    }

    /// <summary>The language of the one who asks; kept in a cookie where the address names it.</summary>
    private static Wordbook Read(HttpContext http, Wordbooks languages)
    {
        if (languages.Find(http.Request.Query[Name]) is { } chosen)
        {
            UnitChoice.Keep(http, Name, chosen.Tag);
            return chosen;
        }

        return languages.Find(http.Request.Cookies[Name]) ?? OfBrowser(http, languages) ?? Wordbook.English;
    }

    private static Wordbook? OfBrowser(HttpContext http, Wordbooks languages) => http.Request.GetTypedHeaders().AcceptLanguage
        .OrderByDescending(wanted => wanted, StringWithQualityHeaderValueComparer.QualityComparer)
        .Select(wanted => languages.Find(wanted.Value.Value))
        .FirstOrDefault(language => language is not null);
}

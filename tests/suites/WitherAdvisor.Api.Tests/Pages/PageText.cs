using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Tests.Pages;

/// <summary>Draws a component as the server does and reads it as a person does.</summary>
internal static partial class PageText
{
    /// <summary>The markup.</summary>
    public static async Task<string> Html<T>(object parameters)
        where T : IComponent
    {
        await using ServiceProvider services = new ServiceCollection()
            .AddLogging()
            .AddSingleton<AntiforgeryStateProvider, FixedToken>()
            .AddSingleton(Wordbook.English)
            .AddSingleton(Wordbooks.Embedded)
            .BuildServiceProvider();
        await using HtmlRenderer renderer = new(services, services.GetRequiredService<Microsoft.Extensions.Logging.ILoggerFactory>());
        Dictionary<string, object?> named = parameters.GetType().GetProperties()
            .ToDictionary(property => property.Name, property => property.GetValue(parameters), StringComparer.Ordinal);
        return await renderer.Dispatcher.InvokeAsync(async () =>
            (await renderer.RenderComponentAsync<T>(ParameterView.FromDictionary(named))).ToHtmlString());
    }

    /// <summary>What stands on the page, blanks made one.</summary>
    public static async Task<string> Of<T>(object parameters)
        where T : IComponent =>
        Read(await Html<T>(parameters));

    /// <summary>What stands in a markup, blanks made one.</summary>
    public static string Read(string html) => Blanks().Replace(WebUtility.HtmlDecode(Tags().Replace(html, " ")), " ").Trim();

    [GeneratedRegex("<[^>]*>", RegexOptions.NonBacktracking)]
    private static partial Regex Tags();

    [GeneratedRegex(@"\s+", RegexOptions.NonBacktracking)]
    private static partial Regex Blanks();

    private sealed class FixedToken : AntiforgeryStateProvider
    {
        public override AntiforgeryRequestToken GetAntiforgeryToken() => new("token-of-this-page", "antiforgery");
    }
}

using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Api.Tests.Pages;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Tests.Wording;

public sealed class LanguageChoiceTests : IDisposable
{
    private const string Backward = $"<html lang=\"{MadeUpLanguage.Tag}\"";
    private const string English = "<html lang=\"en\"";

    private readonly PageHost host = new(services => services.AddSingleton(new Wordbooks([Wordbook.English, MadeUpLanguage.Book])));

    [Fact]
    public async Task A_browser_that_asks_for_nothing_gets_English() =>
        Assert.Contains(English, await host.Page("/"), StringComparison.Ordinal);

    [Theory]
    [InlineData(MadeUpLanguage.Tag, Backward)]
    [InlineData($"en;q=0.5, {MadeUpLanguage.Tag};q=0.8", Backward)]
    [InlineData($"en-GB, {MadeUpLanguage.Tag};q=0.8", English)]
    [InlineData($"xx, {MadeUpLanguage.Tag};q=0.1", Backward)]
    [InlineData("xx", English)]
    [InlineData("*", English)]
    public async Task The_browsers_first_language_that_is_here_is_spoken(string accepted, string page)
    {
        host.Browser.DefaultRequestHeaders.TryAddWithoutValidation("Accept-Language", accepted);

        Assert.Contains(page, await host.Page("/"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_language_chosen_on_a_page_stays_chosen_whatever_the_browser_wants()
    {
        host.Browser.DefaultRequestHeaders.TryAddWithoutValidation("Accept-Language", "en");
        Assert.Contains($"href=\"/?language={MadeUpLanguage.Tag}\"", await host.Page("/"), StringComparison.Ordinal);

        Assert.Contains(Backward, await host.Page("/?language=" + MadeUpLanguage.Tag), StringComparison.Ordinal);
        Assert.Contains(Backward, await host.Page("/model"), StringComparison.Ordinal);
        Assert.Contains(English, await host.Page("/?language=en"), StringComparison.Ordinal);
        Assert.Contains(English, await host.Page("/?language=nowhere"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_interface_speaks_English_to_everybody()
    {
        await host.WithSite();
        host.Browser.DefaultRequestHeaders.TryAddWithoutValidation("Accept-Language", MadeUpLanguage.Tag);

        string review = await host.Browser.GetStringAsync(new Uri("/v1/sites/invented-hill/weather/review", UriKind.Relative), TestContext.Current.CancellationToken);

        Assert.Contains("Dry bulb and wet bulb now.", review, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_there_is_one_language_nothing_is_to_be_chosen()
    {
        using PageHost plain = new();

        Assert.DoesNotContain("?language=", await plain.Page("/"), StringComparison.Ordinal);
    }

    public void Dispose() => host.Dispose();
}

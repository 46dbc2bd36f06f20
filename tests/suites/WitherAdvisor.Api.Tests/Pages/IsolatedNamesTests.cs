using System.Net;
using System.Net.Http.Json;
using System.Text.RegularExpressions;
using WitherAdvisor.Api.Pages.Batches;

namespace WitherAdvisor.Api.Tests.Pages;

/// <summary>A name in a script that runs the other way turns nothing round it.</summary>
public sealed class IsolatedNamesTests : IDisposable
{
    private const string Site = "\u05D2\u05D1\u05E2\u05D4 7";
    private const string Division = "\u05E2\u05DC\u05D9\u05D5\u05DF 3";

    private readonly PageHost host = new();

    [Theory]
    [InlineData("/", Site)]
    [InlineData("/", Division)]
    [InlineData(PageHost.NewBatch, Site)]
    [InlineData(PageHost.NewReading, Site)]
    [InlineData("/sites/invented-hill/weather", Site)]
    [InlineData("/sites/invented-hill/weather/upload", Site)]
    [InlineData("/sites/invented-hill/season", Site)]
    [InlineData("/sites/invented-hill/outcomes", Site)]
    [InlineData("/sites/invented-hill/outcomes/import", Site)]
    [InlineData("/sites/invented-hill/calibration", Site)]
    [InlineData("", Site)]
    [InlineData("", Division)]
    public async Task A_name_on_a_page_is_isolated(string address, string name)
    {
        string batch = await Loaded();

        string page = await host.Page(address.Length > 0 ? address : batch);

        string body = WebUtility.HtmlDecode(page[page.IndexOf("<main", StringComparison.Ordinal)..]);
        Assert.Contains($"<bdi>{name}", body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_refuses_what_shows_as_nothing()
    {
        await host.WithSite();
        using HttpResponseMessage answer = await host.Send(
            PageHost.NewBatch, PageHost.NewBatch, PageHost.Batch((BatchForm.Division, "Lower\u202E division")));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("invisible characters", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    public void Dispose() => host.Dispose();

    private async Task<string> Loaded()
    {
        await host.WithSite();
        (await host.Browser.PutAsJsonAsync(
            "/v1/sites/invented-hill", new { name = Site, elevation_m = 1500, latitude_deg = 6.9, longitude_deg = 80.7, time_zone = "Asia/Colombo" }, TestContext.Current.CancellationToken)).EnsureSuccessStatusCode();
        using HttpResponseMessage answer = await host.Send(PageHost.NewBatch, PageHost.NewBatch, PageHost.Batch((BatchForm.Division, Division)));
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        return Regex.Match(answer.Headers.Location!.OriginalString, "^[^?]+", RegexOptions.NonBacktracking).Value;
    }
}

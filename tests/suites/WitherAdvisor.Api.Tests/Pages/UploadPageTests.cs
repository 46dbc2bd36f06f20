using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings.Sources;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

public sealed class UploadPageTests : IDisposable
{
    private const string Upload = "/sites/invented-hill/weather/upload";
    private const string Good = "time,dry_bulb_c,wet_bulb_c,instrument\n2026-07-14T10:00:00Z,19,17,sling\n";
    private const string Bad = "2026-07-14T09:00:00Z,19,\"<b>\",\n";

    private readonly PageHost host = new();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_good_file_is_kept_and_leads_to_the_weather()
    {
        await host.WithSite();

        using HttpResponseMessage answer = await Send(Good, "Forecast", "AllOrNone");

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Equal("/sites/invented-hill/weather", answer.Headers.Location!.OriginalString);
        SourcedReading kept = Assert.Single(await Kept());
        Assert.Equal(WeatherSource.CallerForecast, kept.Source);
        Assert.Equal(WitherAdvisor.Air.PsychrometerKind.Sling, kept.Reading.Instrument);
    }

    [Fact]
    public async Task A_file_with_a_bad_row_keeps_nothing_and_says_which()
    {
        await host.WithSite();

        using HttpResponseMessage answer = await Send(Good + Bad, "Observed", "AllOrNone");

        string html = await answer.Content.ReadAsStringAsync(Cancel);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("line 3, column wet_bulb_c is \"<b>\"; allowed is -40 to 50 °C.", PageText.Read(html), StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", html, StringComparison.Ordinal);
        Assert.Empty(await Kept());
    }

    [Fact]
    public async Task Where_so_chosen_the_good_rows_are_kept_and_the_bad_ones_told()
    {
        await host.WithSite();

        using HttpResponseMessage answer = await Send(Good + Bad, "Observed", "GoodRows");

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("1 row kept, 1 refused", PageText.Read(await answer.Content.ReadAsStringAsync(Cancel)), StringComparison.Ordinal);
        Assert.Single(await Kept());
    }

    [Theory]
    [InlineData("", "Observed", "AllOrNone", "No file, or an empty one")]
    [InlineData("no header", "Observed", "GoodRows", "columns named: time")]
    [InlineData(Good, "Observed", "Some", "“Some” is not on the list")]
    [InlineData(Good, "Wished", "AllOrNone", "“Wished” is not on the list")]
    public async Task What_does_not_fit_is_told_and_nothing_kept(string csv, string kind, string keep, string told)
    {
        await host.WithSite();

        using HttpResponseMessage answer = await Send(csv, kind, keep);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(told, PageText.Read(await answer.Content.ReadAsStringAsync(Cancel)), StringComparison.Ordinal);
        Assert.Empty(await Kept());
    }

    [Fact]
    public async Task Without_its_token_or_without_a_form_nothing_is_kept()
    {
        await host.WithSite();

        using MultipartFormDataContent form = Form(Good, "Observed", "AllOrNone");
        using HttpResponseMessage tokenless = await host.Browser.PostAsync(new Uri(Upload, UriKind.Relative), form, Cancel);
        using StringContent text = new("hello");
        using HttpResponseMessage formless = await host.Browser.PostAsync(new Uri(Upload, UriKind.Relative), text, Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, tokenless.StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, formless.StatusCode);
        Assert.Empty(await Kept());
    }

    public void Dispose() => host.Dispose();

    private static MultipartFormDataContent Form(string csv, string kind, string keep)
    {
        ByteArrayContent file = new(Encoding.UTF8.GetBytes(csv));
        file.Headers.ContentType = new MediaTypeHeaderValue("text/csv");
        return new() { { file, "file", "invented.csv" }, { new StringContent(kind), "kind" }, { new StringContent(keep), "keep" } };
    }

    private async Task<HttpResponseMessage> Send(string csv, string kind, string keep)
    {
        Match token = Regex.Match(await host.Page(Upload), "name=\"(?<name>__RequestVerificationToken)\" value=\"(?<value>[^\"]*)\"", RegexOptions.NonBacktracking);
        using MultipartFormDataContent form = Form(csv, kind, keep);
        form.Add(new StringContent(token.Groups["value"].Value), token.Groups["name"].Value);
        return await host.Browser.PostAsync(new Uri(Upload, UriKind.Relative), form, Cancel);
    }

    private Task<IReadOnlyList<SourcedReading>> Kept() => host.Services.GetRequiredService<IWeatherStore>().ReadSourced(
        "invented-hill", Sample.LoadedAt.AddDays(-1), Sample.LoadedAt.AddDays(1), Cancel);
}

using System.Net;
using System.Text;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Api.Pages.Batches;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Pages.Sheet;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

public sealed class PageRoutesTests : IDisposable
{
    private readonly PageHost host = new();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_service_without_a_site_says_how_to_make_one() =>
        Assert.Contains("PUT /v1/sites", PageText.Read(await host.Page("/")), StringComparison.Ordinal);

    [Fact]
    public async Task A_batch_that_is_entered_is_advised_on_and_lies_on_its_trough()
    {
        await host.WithSite();

        string address = await Entered(PageHost.Batch());

        string advice = PageText.Read(await host.Page(address));
        Assert.Contains("Lower division, Field 7", advice, StringComparison.Ordinal);
        Assert.Contains("°C dry bulb", advice, StringComparison.Ordinal);
        Assert.Contains("Without the rain or dew on the leaf:", advice, StringComparison.Ordinal);
        string home = await host.Page("/");
        Assert.Contains($"href=\"{address}\"", home, StringComparison.Ordinal);
        Assert.Matches("Lower division, Field 7 1176 kg, loaded Tue 16:10 ready (Tue|Wed) [0-9]{2}:[0-9]{2}", PageText.Read(home));
    }

    [Fact]
    public async Task What_was_read_at_the_loft_is_kept_as_weather_of_the_site()
    {
        await host.WithSite();

        await Entered(PageHost.Batch(("rain_24_hours", "12")));

        IWeatherStore weather = host.Services.GetRequiredService<IWeatherStore>();
        WeatherReading reading = Assert.Single(await weather.ReadSourced(
            "invented-hill", Sample.LoadedAt.AddDays(-1), Sample.LoadedAt, Cancel)).Reading;
        Assert.Equal(18, reading.DryBulbC);
        Assert.InRange(reading.WetBulbC!.Value, 16.9, 17.3);
        Assert.Equal([61, 12], (await weather.ReadRainTotals("invented-hill", Sample.LoadedAt.AddDays(-4), Sample.LoadedAt, Cancel)).Select(total => total.RainMm));
    }

    [Fact]
    public async Task A_wrong_form_comes_back_with_what_was_typed_and_nothing_is_kept()
    {
        await host.WithSite();

        using HttpResponseMessage answer = await host.Send(
            PageHost.NewBatch, PageHost.NewBatch, PageHost.Batch((BatchForm.GreenWeight, "99999"), (BatchForm.Division, "<b>Lower</b>")));

        string html = await answer.Content.ReadAsStringAsync(Cancel);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("99999 kg is out of range. 1 to 1470 kg is allowed.", PageText.Read(html), StringComparison.Ordinal);
        Assert.Contains("value=\"99999\"", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", html, StringComparison.Ordinal);
        Assert.Empty(await host.Services.GetRequiredService<IBatchStore>().List("invented-hill", 10, Cancel));
        Assert.Empty(await host.Services.GetRequiredService<IWeatherStore>().ReadSourced(
            "invented-hill", Sample.LoadedAt.AddDays(-1), Sample.LoadedAt.AddDays(1), Cancel));
    }

    [Fact]
    public async Task Pressing_twice_makes_one_batch()
    {
        await host.WithSite();

        string first = await Entered(PageHost.Batch());
        string second = await Entered(PageHost.Batch());

        Assert.Equal(first, second);
        Assert.Single(await host.Services.GetRequiredService<IBatchStore>().List("invented-hill", 10, Cancel));
    }

    [Fact]
    public async Task A_second_lot_on_the_same_trough_is_warned_of_and_not_forbidden()
    {
        await host.WithSite();
        await Entered(PageHost.Batch((BatchForm.Bushes, "Mature"), (BatchForm.GreenWeight, "500")));

        string address = await Entered(PageHost.Batch((BatchForm.Bushes, "Young"), (BatchForm.Field, "Field 9"), (BatchForm.GreenWeight, "500")));

        string page = PageText.Read(await host.Page(address));
        Assert.Contains("Keep lots apart", page, StringComparison.Ordinal);
        Assert.Contains("Leaf of Lower division, Field 7 is still on", page, StringComparison.Ordinal);
        Assert.Contains("young and of mature bushes", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_form_warns_of_what_a_trough_still_holds()
    {
        await host.WithSite();
        await Entered(PageHost.Batch());

        string page = PageText.Read(await host.Page(PageHost.NewBatch));

        Assert.Contains("Trough 1 empty, takes up to 1470 kg", page, StringComparison.Ordinal);
        Assert.Contains("Trough 2 still holds Lower division, Field 7", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Leaf_that_left_its_trough_is_gone_from_the_first_page()
    {
        await host.WithSite();
        string address = await Entered(PageHost.Batch());
        host.Clock.Advance(TimeSpan.FromHours(11));

        using HttpResponseMessage answer = await host.Send(address, address + "/unload");

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Contains("Off the trough since Wed 03:10.", PageText.Read(await host.Page(address)), StringComparison.Ordinal);
        Assert.DoesNotContain("Lower division", await host.Page("/"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Advice_is_given_again_from_the_newest_reading_and_the_old_one_stays()
    {
        await host.WithSite();
        string address = await Entered(PageHost.Batch());
        host.Clock.Advance(TimeSpan.FromHours(2));
        using HttpResponseMessage reading = await host.Send(PageHost.NewReading, PageHost.NewReading,
            ("read_at_date", "2026-07-14"), ("read_at_time", "18:10"), ("dry_bulb", "15"), ("wet_bulb", "14.8"), ("instrument", "Sling"));
        Assert.Equal(HttpStatusCode.SeeOther, reading.StatusCode);

        using HttpResponseMessage answer = await host.Send(address, address + "/advice");

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        IReadOnlyList<KeptAdvice> given = await host.Services.GetRequiredService<IBatchStore>().ListAdvice(address["/batches/".Length..], Cancel);
        Assert.Equal(2, given.Count);
        Assert.NotEqual(given[0].AnswerJson, given[1].AnswerJson);
        Assert.Contains("Advised Tue 14 Jul 2026, 18:10", PageText.Read(await host.Page(address)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Units_chosen_once_hold_for_the_pages_after_and_for_what_is_typed()
    {
        await host.WithSite();
        await host.Page("/?temperature=f&weight=lb");

        string address = await Entered(PageHost.Batch((BatchForm.GreenWeight, "2500"), ("dry_bulb", "64.4"), ("wet_bulb", "63")));

        Assert.Contains("2500 lb green", PageText.Read(await host.Page(address)), StringComparison.Ordinal);
        StoredBatch kept = Assert.Single(await host.Services.GetRequiredService<IBatchStore>().List("invented-hill", 1, Cancel));
        Assert.Equal(1133.980925, kept.Batch.GreenWeightKg, 1e-6);
    }

    [Fact]
    public async Task A_form_keeps_the_units_it_was_drawn_in_though_the_choice_changed_since()
    {
        await host.WithSite();

        using HttpResponseMessage answer = await host.Send(
            PageHost.NewBatch, PageHost.NewBatch + "?weight=lb", PageHost.Batch((BatchForm.GreenWeight, "1000")));

        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        Assert.Equal(1000, Assert.Single(await host.Services.GetRequiredService<IBatchStore>().List("invented-hill", 1, Cancel)).Batch.GreenWeightKg);
    }

    [Theory]
    [InlineData(PageHost.NewBatch)]
    [InlineData(PageHost.NewReading)]
    [InlineData("/batches/{batch}/advice")]
    [InlineData("/batches/{batch}/unload")]
    [InlineData("/batches/{batch}/unloaded")]
    [InlineData("/batches/{batch}/cancelled")]
    [InlineData("/batches/{batch}/mixed")]
    [InlineData("/batches/{batch}/outcome")]
    [InlineData("/sites/invented-hill/outcomes/import")]
    public async Task Without_its_token_no_form_does_anything(string target)
    {
        await host.WithSite();
        string address = await Entered(PageHost.Batch());
        string batch = address["/batches/".Length..];

        using HttpResponseMessage answer = await host.Browser.PostAsync(
            new Uri(target.Replace("{batch}", batch, StringComparison.Ordinal), UriKind.Relative),
            new FormUrlEncodedContent(PageHost.Batch((BatchForm.Field, "Field 1")).Select(field => KeyValuePair.Create(field.Field, field.Typed))), Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("out of date", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        StoredBatch kept = Assert.Single(await host.Services.GetRequiredService<IBatchStore>().List("invented-hill", 10, Cancel));
        Assert.Null(kept.UnloadedAt);
        Assert.Single(await host.Services.GetRequiredService<IBatchStore>().ListAdvice(batch, Cancel));
    }

    [Theory]
    [InlineData("text/plain", "hello")]
    [InlineData("application/json", "{}")]
    [InlineData("multipart/form-data; boundary=x", "--y")]
    [InlineData("application/x-www-form-urlencoded", "%%%=&&&==%00")]
    public async Task A_body_that_is_no_form_is_refused_and_never_a_failure(string type, string body)
    {
        await host.WithSite();
        using StringContent content = new(body, Encoding.UTF8);
        content.Headers.ContentType = System.Net.Http.Headers.MediaTypeHeaderValue.Parse(type);

        using HttpResponseMessage answer = await host.Browser.PostAsync(new Uri(PageHost.NewBatch, UriKind.Relative), content, Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("/sites/nowhere/batches/new")]
    [InlineData("/sites/nowhere/weather/new")]
    [InlineData("/batches/none")]
    [InlineData("/batches/%3Cscript%3E")]
    public async Task What_is_not_kept_is_told_on_a_page(string address)
    {
        using HttpResponseMessage answer = await host.Browser.GetAsync(new Uri(address, UriKind.Relative), Cancel);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Equal("text/html", answer.Content.Headers.ContentType?.MediaType);
        Assert.DoesNotContain("<script", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Pages_let_nothing_run_and_nothing_frame_them()
    {
        using HttpResponseMessage answer = await host.Browser.GetAsync(new Uri("/", UriKind.Relative), Cancel);

        string policy = string.Join(' ', answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("script-src", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
    }

    [Fact]
    public async Task The_sheet_comes_whole_to_a_client_that_asks_for_gzip()
    {
        using HttpRequestMessage request = new(HttpMethod.Get, StyleSheet.Address);
        request.Headers.AcceptEncoding.ParseAdd("gzip");

        using HttpResponseMessage answer = await host.Browser.SendAsync(request, Cancel);

        Assert.Equal("text/css", answer.Content.Headers.ContentType?.MediaType);
        Assert.Contains("prefers-color-scheme", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        Assert.Contains(StyleSheet.Address, await host.Page("/"), StringComparison.Ordinal);
    }

    public void Dispose() => host.Dispose();

    private async Task<string> Entered((string Field, string Typed)[] batch)
    {
        using HttpResponseMessage answer = await host.Send(PageHost.NewBatch, PageHost.NewBatch, batch);
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        return answer.Headers.Location!.OriginalString;
    }
}

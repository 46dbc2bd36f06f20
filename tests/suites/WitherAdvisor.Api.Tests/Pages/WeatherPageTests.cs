using System.Net.Http.Json;
using System.Text.RegularExpressions;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.WeatherFeeds;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

public sealed class WeatherPageTests : IDisposable
{
    private const string Weather = "/sites/invented-hill/weather";

    private readonly PageHost host = new();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_site_without_weather_says_so_and_asks_for_the_two_readings_that_help_most()
    {
        await host.WithSite();

        string page = PageText.Read(await host.Page(Weather));

        Assert.Contains("No reading yet", page, StringComparison.Ordinal);
        Assert.Contains("These readings would help most Dry bulb and wet bulb now. Rain since", page, StringComparison.Ordinal);
        Assert.Contains("There is no forecast of the coming night.", page, StringComparison.Ordinal);
        Assert.Contains("Temperature, humidity, rain, wind, ", page, StringComparison.Ordinal);
        Assert.Contains("The site has no feed", page, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"Tue 14 Jul \* (ordinary|wet|dry)", page);
    }

    [Fact]
    public async Task Age_holes_days_and_spells_stand_in_words_beside_the_pictures()
    {
        await host.WithSite();
        // Read hourly to 3 h ago, 2 mm an hour on the day before; forecast from then to the coming noon.
        await Save(WeatherSource.Observed, Hours(-24 * 20, -3, hour => hour is > -40 and <= -20 ? 2 + (hour % 2 == 0 ? 0.1 : -0.1) : 0));
        await Save(WeatherSource.CallerForecast, Hours(-2, 20, _ => 0));

        string html = await host.Page(Weather);
        string page = PageText.Read(html);

        Assert.Contains("Last reading 3 h ago", page, StringComparison.Ordinal);
        Assert.Contains("The forecast was saved just now and reaches to Wed 12:10.", page, StringComparison.Ordinal);
        Assert.Contains("Temperature, humidity, rain, wind, Tue 14 Jul 2026, 13:30 to Tue 15:30 (2 h): not observed; the forecast is used instead.", page, StringComparison.Ordinal);
        Assert.Contains("Wet spell.", page, StringComparison.Ordinal);
        Assert.Matches(@"Mon 13 Jul wet [0-9.]+ [0-9]+", page);
        Assert.Contains("Mon 13 Jul: wet. 40 mm fell in 72 hours; a wet spell begins at 25 mm.", page, StringComparison.Ordinal);
        Assert.Contains("line dry forecast", html, StringComparison.Ordinal);
        Assert.Contains("class=\"ahead\"", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_hole_is_hatched_and_said_in_words_within_the_picture()
    {
        await host.WithSite();
        await Save(WeatherSource.Observed, Hours(-24 * 20, 0, hour => hour is > -200 and <= -100 ? null : 0));

        string html = await host.Page(Weather);

        Assert.Matches("<rect class=\"hole\"[^>]*fill=\"url\\(#days-hatch\\)\"></rect>\\s*<text class=\"word\"[^>]*>not known</text>", html);
        Assert.Matches(@"(Wed 8|Thu 9) Jul not known", PageText.Read(html));
    }

    [Fact]
    public async Task Units_chosen_hold_for_pictures_and_figures_and_keep_the_moment_looked_at()
    {
        await host.WithSite();
        await Save(WeatherSource.Observed, Hours(-24 * 12, 0, _ => 0));

        string html = await host.Page($"{Weather}?at=2026-07-14T10:40:00Z&temperature=f");

        Assert.Contains("dry bulb and dew point, °F", PageText.Read(html), StringComparison.Ordinal);
        Assert.Matches("Dry bulb from 64\\.4 °F to 64\\.[56] °F", PageText.Read(html));
        Assert.Contains("weather?at=2026-07-14T10%3A40%3A00Z&amp;temperature=c", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_a_moment_gone_by_nothing_read_later_is_known()
    {
        await host.WithSite();
        await Save(WeatherSource.Observed, Hours(-24 * 12, 0, _ => 0));

        string page = PageText.Read(await host.Page($"{Weather}?at=2026-07-14T06:40:00Z"));

        Assert.Contains("Last reading just now", page, StringComparison.Ordinal);
        Assert.Contains("Leaf plucked Tue 12:10", page, StringComparison.Ordinal);
        Assert.Matches("Temperature, humidity, rain, wind, Tue 14 Jul 2026, [0-9:]+ to Wed [0-9:]+ \\([0-9]+ h\\): no forecast", page);
    }

    [Theory]
    [InlineData("at=nonsense")]
    [InlineData("at=0001-01-01T00:00:00Z")]
    [InlineData("at=9998-12-31T00:00:00Z")]
    [InlineData("at=")]
    public async Task An_address_that_names_no_moment_shows_now(string query)
    {
        await host.WithSite();

        Assert.Contains("Leaf plucked now", PageText.Read(await host.Page($"{Weather}?{query}")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_feeds_attribution_and_its_last_refusal_stand_on_the_page()
    {
        await host.WithSite();
        ISiteStore sites = host.Services.GetRequiredService<ISiteStore>();
        await sites.PutSite((await sites.FindSite("invented-hill", Cancel))! with { Feed = "hill-feed" }, Cancel);
        await host.Services.GetRequiredService<IFeedLog>().Add(
            new("invented-hill", "hill-feed", Sample.LoadedAt.AddHours(-1), new FeedFault.SaidThen("The feed did not answer."), 0, null, null, []), Cancel);

        string page = PageText.Read(await host.Page(Weather));

        Assert.Contains("Feed “hill-feed”: It has given no weather yet. When last asked, Tue 14 Jul 2026, 15:10, it gave none: The feed did not answer.", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task First_page_and_advice_lead_to_the_weather()
    {
        await host.WithSite();
        Assert.Contains($"href=\"{Weather}\"", await host.Page("/"), StringComparison.Ordinal);

        using HttpResponseMessage entered = await host.Send(PageHost.NewBatch, PageHost.NewBatch, PageHost.Batch());
        Match link = Regex.Match(await host.Page(entered.Headers.Location!.OriginalString), $"href=\"(?<address>{Weather}\\?at=[^\"]+)\"", RegexOptions.NonBacktracking);

        Assert.Contains("Leaf plucked Tue 16:10", PageText.Read(await host.Page(link.Groups["address"].Value)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_site_that_is_not_kept_is_told_on_a_page()
    {
        using HttpResponseMessage answer = await host.Browser.GetAsync(new Uri("/sites/nowhere/weather", UriKind.Relative), Cancel);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, answer.StatusCode);
    }

    public void Dispose() => host.Dispose();

    private static IReadOnlyList<WeatherReading> Hours(int from, int to, Func<int, double?> rainMm) =>
    [
        .. Enumerable.Range(from, to - from + 1).Select(hour => new WeatherReading(
            Sample.LoadedAt.AddHours(hour), 18 + 0.1 * (hour & 1), RelativeHumidity: 0.85, RainMm: rainMm(hour), WindMPerS: 2)),
    ];

    private Task<int> Save(WeatherSource source, IReadOnlyList<WeatherReading> readings) =>
        host.Services.GetRequiredService<IWeatherStore>().SaveReadings("invented-hill", source, readings, Sample.LoadedAt, Cancel);
}

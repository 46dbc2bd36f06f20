using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Api.Tests.Weather;

public sealed class WeatherReviewEndpointsTests(RunningService service)
{
    private const string At = "2026-03-01T13:00:00%2B05:30";
    private static readonly DateTimeOffset Loaded = DateTimeOffset.Parse("2026-03-01T13:00:00+05:30");

    [Fact]
    public async Task The_review_tells_hours_days_spells_with_their_reasons_holes_and_age()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonArray readings = Bodies.Readings(Loaded.AddHours(-2), 24 * 20);
        foreach (JsonNode? wet in readings.Skip(480 - 30).Take(10))
        {
            wet!["rain_mm"] = 3;
        }

        await loft.Observe(readings);
        (await loft.Caller.Post(loft.Path + "/weather?kind=forecast", Bodies.Readings(Loaded.AddHours(30), 31))).Expect(200);

        JsonNode review = (await loft.Caller.Get($"{loft.Path}/weather/review?at={At}")).Expect(200).Json;

        Assert.Equal(16, review["days"]!.AsArray().Count);
        Assert.Equal(2, (double)review["age"]!["read_ago_hours"]!);
        Assert.False((bool)review["age"]!["is_stale"]!);
        Assert.Equal("wet", (string)review["spell_now"]!["kind"]!);
        JsonNode wetDay = Assert.Single(review["days"]!.AsArray(), day => (string?)day!["spell"]!["decided_by"] == "rain_in72_hours" && !(bool)day["ends_ahead"]!)!;
        Assert.Matches("^[0-9]+ mm fell in 72 hours; a wet spell begins at 25 mm\\.$", (string)wetDay["spell"]!["because"]!);
        JsonNode[] hours = [.. review["hours"]!.AsArray().Select(hour => hour!)];
        Assert.Equal(18, hours.Count(hour => (bool)hour["is_ahead"]!));
        Assert.All(hours.Where(hour => (bool)hour["is_ahead"]!), hour => Assert.Equal("forecast", (string)hour["standing"]!["dry_bulb"]!));
        Assert.Equal(
            (double)hours[^1]["dry_bulb_c"]! - (double)hours[^1]["wet_bulb_c"]!, (double)hours[^1]["hygrometric_difference_k"]!, 0.011);
        JsonNode hole = Assert.Single(review["holes"]!.AsArray(), hole => (string)hole!["quantity"]! == "rain" && (string)hole["instead"]! == "forecast")!;
        Assert.Equal(1, (double)hole["length_hours"]!);
        Assert.Equal("rain", (string)review["wanted"]![0]!["kind"]!);
        Assert.Null(review["feed"]);
    }

    [Fact]
    public async Task Of_a_site_without_weather_nothing_is_0_and_every_null_has_its_reason()
    {
        TestLoft loft = await TestLoft.Open(service);

        JsonNode review = (await loft.Caller.Get($"{loft.Path}/weather/review?days=3")).Expect(200).Json;

        Assert.True((bool)review["age"]!["is_stale"]!);
        Assert.All(review["hours"]!.AsArray(), hour =>
        {
            Assert.Null(hour!["rain_mm"]);
            Assert.Equal(7, hour["unknown"]!.AsArray().Count);
        });
        Assert.All(review["days"]!.AsArray(), day => Assert.Null(day!["spell"]!["kind"]));
        Assert.Equal(["bulbs", "rain"], review["wanted"]!.AsArray().Select(wanted => (string)wanted!["kind"]!));
    }

    [Fact]
    public async Task The_feed_of_the_site_stands_beside_its_weather_with_what_came_of_asking_it()
    {
        TestLoft loft = await TestLoft.Open(service);
        using IServiceScope scope = service.Services.CreateScope();
        ISiteStore sites = scope.ServiceProvider.GetRequiredService<ISiteStore>();
        await sites.PutSite((await sites.FindSite(loft.Site, Cancel))! with { Feed = "gone-feed" }, Cancel);
        IFeedLog log = scope.ServiceProvider.GetRequiredService<IFeedLog>();
        await log.Add(new(loft.Site, "gone-feed", Loaded.AddHours(-5), null, 300, Loaded.AddHours(-6), null, [new FeedNote.MissingColumn("wind_speed_10m"), new FeedNote.SaidThen("Wind was missing.")]), Cancel);
        await log.Add(new(loft.Site, "gone-feed", Loaded.AddHours(-1), new FeedFault.TookTooLong(30, null), 0, null, null, []), Cancel);

        JsonNode feed = (await loft.Caller.Get($"{loft.Path}/weather/review?at={At}")).Expect(200).Json["feed"]!;

        Assert.Equal("gone-feed", (string)feed["name"]!);
        Assert.Null(feed["attribution"]);
        Assert.Equal("There was no complete answer within 30 s.", (string)feed["last_refusal"]!);
        Assert.Equal("2026-03-01T08:00:00+05:30", (string)feed["last_good_at"]!);
        Assert.Equal(
            ["The feed gave no wind_speed_10m; it is unknown in all hours.", "Wind was missing."],
            feed["notes"]!.AsArray().Select(note => (string)note!));
    }

    [Fact]
    public async Task Every_value_of_the_series_says_where_it_is_from()
    {
        TestLoft loft = await TestLoft.Open(service);
        DateTimeOffset at = DateTimeOffset.Parse("2026-03-01T07:00:00Z");
        await loft.Observe([new JsonObject { ["time"] = "2026-03-01T07:00:00Z", ["dry_bulb_c"] = 19 }]);
        (await loft.Caller.PostText(loft.Path + "/weather?kind=forecast", """[{"time": "2026-03-01T07:00:00Z", "wind_m_per_s": 2, "rain_mm": 5}]""")).Expect(200);
        using IServiceScope scope = service.Services.CreateScope();
        await scope.ServiceProvider.GetRequiredService<IWeatherStore>().SaveFromFeed(
            loft.Site, "hill-feed", [new WeatherReading(at, 21, DewPointC: 15, RainMm: 1)], [], at.AddHours(2), Cancel);

        JsonNode weather = (await loft.Caller.Get($"{loft.Path}/weather?kind=observed&from=2026-03-01T00:00:00Z&to=2026-03-02T00:00:00Z")).Expect(200).Json;

        JsonNode best = Assert.Single(weather["best"]!.AsArray())!;
        Assert.Equal(19, (double)best["reading"]!["dry_bulb_c"]!);
        Assert.Equal("observed", (string)best["sources"]!["dry_bulb"]!["source"]!);
        Assert.Equal("feed_analysis", (string)best["sources"]!["humidity"]!["source"]!);
        Assert.Equal("hill-feed", (string)best["sources"]!["rain"]!["feed"]!);
        Assert.Equal("2026-03-01T14:30:00+05:30", (string)best["sources"]!["rain"]!["saved_at"]!);
        Assert.Equal("caller_forecast", (string)best["sources"]!["wind"]!["source"]!);
        Assert.Null(best["sources"]!["shortwave"]);
        Assert.Single(weather["readings"]!.AsArray());
        JsonNode[] rain = [.. weather["holes"]!.AsArray().Where(hole => (string)hole!["quantity"]! == "rain").Select(hole => hole!)];
        Assert.Equal([6.0, 17.0], rain.Select(hole => (double)hole["length_hours"]!));
        Assert.All(rain, hole => Assert.Equal("unknown", (string)hole["instead"]!));
    }

    [Theory]
    [InlineData("days=0", "days")]
    [InlineData("days=61", "days")]
    [InlineData("at=2026-03-01", "at")]
    [InlineData("from=1", "from")]
    public async Task What_is_asked_of_a_review_is_read_strictly(string query, string field)
    {
        TestLoft loft = await TestLoft.Open(service);
        (await loft.Caller.Get($"{loft.Path}/weather/review?{query}")).ExpectInvalid(field);
    }

    [Fact]
    public async Task A_review_needs_its_site() =>
        (await service.Caller.Get("/v1/sites/nowhere/weather/review")).ExpectProblem(404, "urn:witheradvisor:problem:unknown-site");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;
}

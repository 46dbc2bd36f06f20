using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.WeatherFeeds.Testing;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>The feed that a site names.</summary>
public sealed class SiteFeedTests(RunningService shared)
{
    [Fact]
    public async Task A_site_names_its_feed_and_may_name_none()
    {
        TestLoft loft = new(shared.Caller);
        JsonObject site = Bodies.Site();
        site["feed"] = "hill";

        Assert.Equal("hill", (string?)(await loft.Caller.Put(loft.Path, site)).Expect(201).Json["feed"]);
        Assert.Equal("hill", (string?)(await loft.Caller.Get(loft.Path)).Expect(200).Json["feed"]);

        site["feed"] = null;
        Assert.Null((await loft.Caller.Put(loft.Path, site)).Expect(200).Json["feed"]);
        Assert.True((await loft.Caller.Get(loft.Path)).Json.AsObject().ContainsKey("feed"));
    }

    [Theory]
    [InlineData("dale")]
    [InlineData("Hill")]
    [InlineData("https://feed.example/v1/forecast")]
    public async Task A_feed_that_is_not_configured_is_refused_with_the_names_that_are(string feed)
    {
        TestLoft loft = new(shared.Caller);
        JsonObject site = Bodies.Site();
        site["feed"] = feed;

        var error = (await loft.Caller.Put(loft.Path, site)).ExpectInvalid("feed").Errors.Single();

        Assert.Equal($"\"{feed}\"", error.Given);
        Assert.Equal("null or one of: hill", error.Allowed);
        (await loft.Caller.Get(loft.Path)).Expect(404);
    }

    [Theory]
    [InlineData("/v1/advice")]
    [InlineData("/v1/simulations")]
    public async Task An_advice_is_made_of_weather_and_takes_no_feed(string path)
    {
        JsonObject body = path == "/v1/advice" ? Bodies.Advice() : Bodies.Simulation();
        body["site"]!["feed"] = "hill";

        (await shared.Caller.Post(path, body)).ExpectInvalid("site.feed");
    }

    [Fact]
    public async Task A_site_without_a_feed_has_nothing_said_of_one_beside_its_advice()
    {
        JsonNode taken = await (await TestLoft.Open(shared)).Take();

        Assert.True(taken.AsObject().ContainsKey("feed"));
        Assert.Null(taken["feed"]);
    }

    [Theory]
    [InlineData("elevation_m", 1510)]
    [InlineData("latitude_deg", 7.01)]
    [InlineData("longitude_deg", 80.71)]
    public async Task What_a_feed_said_of_a_site_that_stands_elsewhere_is_dropped_and_the_long_past_asked_for_anew(string field, double value)
    {
        using FeedServer server = new(FeedServer.Json(LongAnswer.Text()));
        await using FedService service = new(server.Url);
        TestLoft loft = await service.Open();
        (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);
        await loft.Observe(Bodies.Readings(service.Clock.GetUtcNow(), 2));
        JsonObject moved = FedService.FedSite();
        moved[field] = value;

        (await loft.Caller.Put(loft.Path, moved)).Expect(200);

        Assert.Equal(2, await Kept(service, loft));
        (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);
        Assert.Equal(["92", "92"], server.Requests.Select(request => request.GetParameter("past_days")!.Single()));
        Assert.Equal(LongAnswer.Days * 24 + 2, await Kept(service, loft));
    }

    [Fact]
    public async Task A_site_that_only_changes_its_name_keeps_what_its_feed_said()
    {
        using FakeFeed feed = FakeFeed.Json(LongAnswer.Text());
        await using FedService service = new(feed.Url);
        TestLoft loft = await service.Open();
        (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);
        JsonObject renamed = FedService.FedSite();
        renamed["name"] = "Another invented hill";

        (await loft.Caller.Put(loft.Path, renamed)).Expect(200);

        Assert.Equal(LongAnswer.Days * 24, await Kept(service, loft));
    }

    private static async Task<int> Kept(FedService service, TestLoft loft) =>
        (await service.Services.GetRequiredService<IWeatherStore>().ReadSourced(
            loft.Site, LongAnswer.First, LongAnswer.First.AddDays(LongAnswer.Days), TestContext.Current.CancellationToken)).Count;
}

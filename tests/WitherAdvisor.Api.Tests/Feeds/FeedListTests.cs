using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.WeatherFeeds.Tests;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>What the service tells of its feeds.</summary>
public sealed class FeedListTests
{
    [Fact]
    public async Task Feeds_are_listed_with_their_health_and_never_with_address_or_key()
    {
        using FeedServer server = new(FeedServer.Json("""{"error":true,"reason":"hush-hush is no key"}""", 401));
        await using FedService service = new(
            server.Url, (FedService.Key("Key"), "hush-hush"), (FedService.Key("KeyQueryParameter"), "apikey"), ("FeedRefresh:Every", "02:00:00"));
        TestLoft loft = await service.Open();

        JsonNode before = Assert.Single((await loft.Caller.Get("/v1/feeds")).Expect(200).Json["feeds"]!.AsArray())!;
        Reply refresh = (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);
        JsonNode taken = await loft.Take(service.Batch());
        Reply after = (await loft.Caller.Get("/v1/feeds")).Expect(200);

        Assert.Equal(("valley", "Invented weather", "closed"), ((string?)before["name"], (string?)before["attribution"], (string?)before["breaker"]));
        Assert.Null(before["last_refusal"]);
        JsonNode feed = Assert.Single(after.Json["feeds"]!.AsArray())!;
        Assert.Equal("key_refused", (string?)feed["last_refusal"]!["reason"]);
        Assert.Equal(FeedFixture.FetchedAt, (DateTimeOffset)feed["last_refused_at"]!);
        Assert.Null(feed["last_good_at"]);
        Assert.Equal(2, (double)after.Json["refresh_every_hours"]!);
        Assert.All(new[] { refresh.Text, taken.ToJsonString(), after.Text }, text =>
        {
            Assert.DoesNotContain("hush", text, StringComparison.Ordinal);
            Assert.DoesNotContain(server.Url, text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public async Task A_breaker_that_opened_is_told()
    {
        using FeedServer server = new(FeedServer.Status(500));
        await using FedService service = new(server.Url, (FedService.Key("BreakerFailures"), "2"));
        TestLoft loft = await service.Open();

        (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);
        (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);

        JsonNode feed = (await loft.Caller.Get("/v1/feeds")).Expect(200).Json["feeds"]![0]!;
        Assert.Equal("open", (string?)feed["breaker"]);
        Assert.Equal(FeedFixture.FetchedAt.AddMinutes(2), (DateTimeOffset)feed["retry_after"]!);
        Assert.Equal(2, server.Requests.Count);
    }
}

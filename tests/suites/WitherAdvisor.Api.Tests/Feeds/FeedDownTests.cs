using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.WeatherFeeds.Testing;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>A feed that was well for a while and then is not.</summary>
public sealed class FeedDownTests
{
    [Fact]
    public async Task With_the_feed_down_for_a_day_advice_goes_on_from_stored_hours_marked_stale_and_asks_nothing_of_the_feed()
    {
        using FeedServer server = new(FeedServer.Json(LongAnswer.Text()), FeedServer.Status(503));
        await using FedService service = new(server.Url);
        TestLoft loft = await service.Open();
        (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);
        service.Clock.Advance(TimeSpan.FromHours(24));
        JsonNode refresh = (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200).Json;
        int asked = server.Requests.Count;

        JsonNode taken = await loft.Take(service.Batch());
        JsonNode again = (await loft.Caller.Post($"/v1/batches/{taken["batch"]!["id"]}/advice")).Expect(201).Json;

        Assert.Equal("server_fault", (string?)refresh["refusal"]!["reason"]);
        Assert.Equal(24.33, (double)refresh["kept"]!["age_hours"]!);
        Assert.Equal(asked, server.Requests.Count);
        JsonNode advice = taken["kept"]!["advice"]!;
        Assert.Equal("advised", (string?)advice["status"]);
        Assert.Contains(
            "There is no reading from the 24.3 h before loading: the forecast was used for 24 of those hours.",
            advice["assumptions"]!.ToJsonString() + advice["leaf"]!["missing"]!.ToJsonString(), StringComparison.Ordinal);
        Assert.Contains("weather_stale", advice.ToJsonString(), StringComparison.Ordinal);
        Assert.Equal(
            "The feed valley gave no weather on Sat 6 Jun 2026, 15:50. The feed failed (status 503). "
            + "What is kept from it came on Fri 5 Jun 2026, 15:50. Invented weather.",
            (string?)taken["feed"]!["text"]);
        Assert.Equal(advice.ToJsonString(), again["advice"]!.ToJsonString());
        Assert.Contains(
            "The feed failed (status 503). What is kept from it came on Fri 5 Jun 2026, 15:50. Invented weather.",
            (await loft.Caller.Get($"/batches/{taken["batch"]!["id"]}")).Expect(200).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_feed_that_never_answers_does_not_hold_up_advice()
    {
        using FakeFeed feed = FakeFeed.Slow((_, cancel) => Task.Delay(Timeout.Infinite, cancel));
        await using FedService service = new(feed.Url);
        TestLoft loft = await service.Open();
        await loft.Observe(Bodies.Readings(service.Clock.GetUtcNow(), 24));
        Task<Reply> refresh = loft.Caller.Post(loft.Path + "/weather/refresh");
        await feed.Arrival!();

        JsonNode taken = await loft.Take(service.Batch());

        Assert.False(refresh.IsCompleted);
        Assert.Equal("advised", (string?)taken["kept"]!["advice"]!["status"]);
        Assert.Contains("has not been asked", (string)taken["feed"]!["text"]!, StringComparison.Ordinal);
        service.Clock.Advance(FedService.TotalLimit);
        Assert.Equal("timed_out", (string?)(await refresh).Expect(200).Json["refusal"]!["reason"]);
    }

    [Fact]
    public async Task A_site_across_a_change_of_the_clock_gets_its_weather_and_its_times_right()
    {
        // Belgium's clocks went from 02:00 to 03:00 on 29 March 2026, at 01:00 GMT (Directive 2000/84/EC).
        DateTimeOffset loadedAt = new(2026, 3, 28, 21, 0, 0, TimeSpan.Zero);
        using FakeFeed feed = FakeFeed.Raw((_, client, cancel) => FakeFeed.SendJson(client, FeedFixture.Text("spring-forward.json"), cancel, dated: loadedAt));
        await using FedService service = new(feed.Url);
        service.Clock.AdjustTime(loadedAt);
        TestLoft loft = new(service.Caller);
        JsonObject site = FedService.FedSite();
        (site["latitude_deg"], site["longitude_deg"], site["elevation_m"], site["time_zone"]) = (50.85, 4.35, 100, "Europe/Brussels");
        (await loft.Caller.Put(loft.Path, site)).Expect(201);
        await loft.AddTrough("trough-1");

        JsonNode weather = (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200).Json["taken"]!;
        JsonNode plan = (await loft.Take(service.Batch()))["kept"]!["advice"]!["plan"]!;

        Assert.Equal(new DateTimeOffset(2026, 3, 30, 23, 0, 0, TimeSpan.Zero), (DateTimeOffset)weather["to"]!);
        Assert.Equal(72, (int)weather["analysed_hours"]! + (int)weather["forecast_hours"]!);
        Assert.Equal("2026-03-28T22:00:00+01:00", (string?)plan["set_now"]!["at"]);
        DateTimeOffset stop = (DateTimeOffset)plan["ready"]!["stop_at"]!;
        Assert.Equal(TimeSpan.FromHours(2), stop.Offset);
        Assert.Equal((double)plan["ready"]!["stop_hours"]!, (stop - loadedAt).TotalHours, 0.01);
    }
}

using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Api.Feeds;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.Loft.FeedRefresh;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.WeatherFeeds;
using WitherAdvisor.WeatherFeeds.Tests;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>Fetching on demand: what is asked of the feed, how often, and what is refused before it is asked.</summary>
public sealed class RefreshTests
{
    [Fact]
    public async Task The_long_past_is_asked_for_until_it_came_and_then_only_what_was_missed()
    {
        using FeedServer server = new(FeedServer.Status(404), FeedServer.Json(LongAnswer.Text()));
        await using FedService service = new(server.Url);
        TestLoft loft = await service.Open();

        foreach (int days in new[] { 0, 0, 0, 1, 7, 300 })
        {
            service.Clock.Advance(TimeSpan.FromDays(days));
            (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);
        }

        // Refused; taken; a moment later; a day later; a week later; after most of a year.
        Assert.Equal(["92", "92", "3", "3", "8", "92"], server.Requests.Select(request => request.GetParameter("past_days")!.Single()));
        Assert.All(server.Requests, request => Assert.Equal("3", request.GetParameter("forecast_days")!.Single()));
    }

    [Theory]
    [InlineData(7, "7", "3", "7")]
    [InlineData(2, "2", "2", "2")]
    public async Task A_feed_is_asked_for_no_more_past_days_than_it_gives(int most, string first, string next, string afterMonths)
    {
        using FeedServer server = new(FeedServer.Json(LongAnswer.Text()));
        await using FedService service = new(server.Url, (FedService.Key("PastDays"), $"{most}"));
        TestLoft loft = await service.Open();

        foreach (int days in new[] { 0, 0, 100 })
        {
            service.Clock.Advance(TimeSpan.FromDays(days));
            (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);
        }

        Assert.Equal([first, next, afterMonths], server.Requests.Select(request => request.GetParameter("past_days")!.Single()));
    }

    [Fact]
    public async Task A_feed_that_sent_us_away_is_not_asked_again_before_its_time()
    {
        using FeedServer server = new(FeedServer.Status(429).WithHeader("Retry-After", "3600"), FeedServer.Json(LongAnswer.Text()));
        await using FedService service = new(server.Url);
        TestLoft loft = await service.Open();

        JsonNode first = (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200).Json;
        service.Clock.Advance(TimeSpan.FromMinutes(59));
        JsonNode second = (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200).Json;

        Assert.Single(server.Requests);
        Assert.Equal(FeedFixture.FetchedAt.AddHours(1), (DateTimeOffset)second["refusal"]!["retry_after"]!);
        Assert.Equal((DateTimeOffset)first["kept"]!["refused_at"]!, (DateTimeOffset)second["kept"]!["refused_at"]!);

        service.Clock.Advance(TimeSpan.FromMinutes(1));
        Assert.Equal("taken", (string?)(await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200).Json["status"]);
        Assert.Equal(2, server.Requests.Count);
    }

    [Fact]
    public async Task Who_asks_while_a_fetch_runs_gets_its_answer()
    {
        TaskCompletionSource answer = new(TaskCreationOptions.RunContinuationsAsynchronously);
        using RawServer server = new(async (_, client, cancel) =>
        {
            await answer.Task.WaitAsync(cancel);
            await FakeFeed.SendJson(client, LongAnswer.Text(), cancel);
        });
        await using FedService service = new(server.Url);
        TestLoft loft = await service.Open();

        Task<Reply> first = loft.Caller.Post(loft.Path + "/weather/refresh");
        await server.Arrival();
        // Not through the interface: nothing there would tell when the question has come, and it must come before the answer.
        SiteRefresh refresh = service.Services.GetRequiredService<SiteRefresh>();
        StoredSite site = (await service.Services.GetRequiredService<ISiteStore>().FindSite(loft.Site, TestContext.Current.CancellationToken))!;
        IWeatherFeed feed = service.Services.GetRequiredService<IWeatherFeeds>().Find(FedService.Feed)!;
        Task<RefreshOutcome>[] others = [.. Enumerable.Range(0, 7).Select(_ => refresh.Of(site, feed, TestContext.Current.CancellationToken))];
        answer.SetResult();

        Assert.Equal("taken", (string?)(await first).Expect(200).Json["status"]);
        Assert.All(await Task.WhenAll(others), outcome => Assert.IsType<RefreshOutcome.Taken>(outcome));
        Assert.Equal(1, server.Connections);
    }

    [Fact]
    public async Task Weather_of_the_feed_is_kept_with_its_age_and_what_was_forecast_apart()
    {
        using FakeFeed feed = FakeFeed.Json(LongAnswer.Text());
        await using FedService service = new(feed.Url);
        TestLoft loft = await service.Open();
        (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);

        var kept = await service.Services.GetRequiredService<IWeatherStore>().ReadSourced(
            loft.Site, LongAnswer.First, LongAnswer.First.AddDays(LongAnswer.Days), TestContext.Current.CancellationToken);

        Assert.Equal(LongAnswer.Days * 24, kept.Count);
        Assert.All(kept, row => Assert.Equal((FedService.Feed, FeedFixture.FetchedAt), (row.Feed, row.SavedAt)));
        Assert.Equal(LongAnswer.Now + 1, kept.Count(row => row.Source == WitherAdvisor.Readings.Sources.WeatherSource.FeedAnalysis));
    }

    [Fact]
    public async Task An_old_answer_out_of_a_cache_replaces_nothing_newer()
    {
        using RawServer server = new((number, client, cancel) => FakeFeed.SendJson(
            client, LongAnswer.Text(body => body.Column("temperature_2m")[LongAnswer.Now] = 10.0 + number), cancel,
            dated: FeedFixture.FetchedAt.AddHours(1 - number)));
        await using FedService service = new(server.Url);
        TestLoft loft = await service.Open();

        (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);
        (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);

        DateTimeOffset now = LongAnswer.First.AddHours(LongAnswer.Now);
        var kept = await service.Services.GetRequiredService<IWeatherStore>().ReadSourced(
            loft.Site, now, now, TestContext.Current.CancellationToken);
        Assert.Equal(11, kept.Single(row => row.Source == WitherAdvisor.Readings.Sources.WeatherSource.FeedAnalysis).Reading.DryBulbC);
    }

    [Fact]
    public async Task A_site_without_a_feed_is_refused_in_words()
    {
        await using FedService service = new("http://feed.invalid");
        TestLoft loft = new(service.Caller);
        (await loft.Caller.Put(loft.Path, Bodies.Site())).Expect(201);

        Reply reply = (await loft.Caller.Post(loft.Path + "/weather/refresh")).ExpectProblem(409, "urn:witheradvisor:problem:site-without-feed");

        Assert.Contains("Configured: valley.", (string)reply.Json["detail"]!, StringComparison.Ordinal);
        (await loft.Caller.Post("/v1/sites/nowhere/weather/refresh")).ExpectProblem(404, "urn:witheradvisor:problem:unknown-site");
    }

    [Fact]
    public async Task A_feed_that_the_operator_took_away_is_refused_in_words_and_advice_goes_on()
    {
        await using FedService service = new("http://feed.invalid");
        TestLoft loft = await service.Open();
        ISiteStore sites = service.Services.GetRequiredService<ISiteStore>();
        StoredSite site = (await sites.FindSite(loft.Site, TestContext.Current.CancellationToken))!;
        await sites.PutSite(site with { Feed = "gone" }, TestContext.Current.CancellationToken);

        Reply reply = (await loft.Caller.Post(loft.Path + "/weather/refresh")).ExpectProblem(409, "urn:witheradvisor:problem:feed-not-configured");
        JsonNode taken = await loft.Take(service.Batch());

        Assert.Contains("'gone'", (string)reply.Json["detail"]!, StringComparison.Ordinal);
        Assert.Contains("no longer configured", (string)taken["feed"]!["text"]!, StringComparison.Ordinal);
        Assert.Null(taken["feed"]!["attribution"]);
    }
}

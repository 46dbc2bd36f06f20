namespace WitherAdvisor.WeatherFeeds.Tests.Resilience;

public sealed class BreakerTests
{
    private static readonly (string Name, string Value)[] Twice = [("Retries", "0"), ("BreakerFailures", "2"), ("BreakerRest", "00:02:00")];

    [Fact]
    public async Task A_feed_that_fails_again_and_again_is_left_in_peace_and_then_tried()
    {
        using var server = new FeedServer(FeedServer.Status(500), FeedServer.Status(500), FeedServer.Good());
        using var feed = new Feed(server.Url, Twice);
        Expect.Refusal(RefusalReason.ServerFault, await feed.Fetch());
        Assert.Equal(FeedBreaker.Closed, feed.Health.Breaker);
        Expect.Refusal(RefusalReason.ServerFault, await feed.Fetch());
        Assert.Equal(FeedBreaker.Open, feed.Health.Breaker);

        FeedAnswer.Refused left = Expect.Refusal(RefusalReason.BreakerOpen, await feed.Fetch());
        Assert.Equal(FeedFixture.FetchedAt.AddMinutes(2), left.RetryAfter);
        Assert.Equal(2, server.Requests.Count);

        feed.Clock.Advance(TimeSpan.FromMinutes(2));
        Expect.Series(await feed.Fetch());
        Assert.Equal(FeedBreaker.Closed, feed.Health.Breaker);
        Assert.Equal(3, server.Requests.Count);
    }

    [Fact]
    public async Task The_breaker_that_opens_between_two_tries_says_what_went_wrong()
    {
        using var server = new FeedServer(FeedServer.Status(502));
        using var feed = new Feed(server.Url, ("BreakerFailures", "2"));

        Assert.Equal(
            new FeedFault.LeftInPeace(new FeedFault.FeedFailed(502, null)),
            Expect.Refusal(RefusalReason.BreakerOpen, await feed.Fetch()).Fault);
        Assert.Equal(2, server.Requests.Count);
    }

    [Fact]
    public async Task One_feeds_breaker_is_not_anothers()
    {
        using var ill = new FeedServer(FeedServer.Status(500));
        using var well = new FeedServer(FeedServer.Good());
        using var illFeed = new Feed(ill.Url, Twice);
        using var wellFeed = new Feed(well.Url, Twice);
        await illFeed.Fetch();
        await illFeed.Fetch();

        Assert.Equal(FeedBreaker.Open, illFeed.Health.Breaker);
        Expect.Series(await wellFeed.Fetch());
    }

    [Fact]
    public async Task Being_refused_for_what_was_asked_never_opens_it()
    {
        using var server = new FeedServer(FeedServer.Json(FeedFixture.Text("refused.json"), 400));
        using var feed = new Feed(server.Url, Twice);
        for (int fetch = 0; fetch < 5; fetch++)
        {
            Expect.Refusal(RefusalReason.BadRequest, await feed.Fetch());
        }

        Assert.Equal(FeedBreaker.Closed, feed.Health.Breaker);
        Assert.Equal(5, server.Requests.Count);
    }
}

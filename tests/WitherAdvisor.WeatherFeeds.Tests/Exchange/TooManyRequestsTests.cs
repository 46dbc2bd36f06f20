using System.Globalization;
using WireMock.ResponseBuilders;

namespace WitherAdvisor.WeatherFeeds.Tests.Exchange;

public sealed class TooManyRequestsTests
{
    private static readonly DateTimeOffset Now = FeedFixture.FetchedAt;

    [Fact]
    public async Task A_short_retry_after_is_waited_for_to_the_second()
    {
        using var server = new FeedServer(SentAway("concurrent").WithHeader("Retry-After", "7"), FeedServer.Good());
        using var feed = new Feed(server.Url);
        Task<FeedAnswer> fetch = feed.Fetch();

        await feed.Clock.Waiting(TimeSpan.FromSeconds(7));
        Assert.Single(server.Requests);
        feed.Clock.Advance(TimeSpan.FromSeconds(7));

        Expect.Series(await fetch);
        Assert.Equal(2, server.Requests.Count);
    }

    [Fact]
    public async Task A_retry_after_may_be_a_date()
    {
        string date = Now.AddSeconds(12).ToString("R", CultureInfo.InvariantCulture);
        using var server = new FeedServer(SentAway("minutely").WithHeader("Retry-After", date), FeedServer.Good());
        using var feed = new Feed(server.Url);
        Task<FeedAnswer> fetch = feed.Fetch();

        await feed.Clock.Waiting(TimeSpan.FromSeconds(12));
        feed.Clock.Advance(TimeSpan.FromSeconds(12));

        Expect.Series(await fetch);
    }

    [Theory]
    [InlineData("3600", 3_600)]
    [InlineData("99999999", 86_400)]
    public async Task A_long_retry_after_is_an_answer_and_holds_until_then_but_a_day_at_most(string header, int seconds)
    {
        using var server = new FeedServer(SentAway("minutely").WithHeader("Retry-After", header), FeedServer.Good());
        using var feed = new Feed(server.Url);

        FeedAnswer.Refused first = Expect.Refusal(RefusalReason.TooManyRequests, await feed.Fetch());
        feed.Clock.Advance(TimeSpan.FromSeconds(seconds - 1));
        FeedAnswer second = await feed.Fetch();

        Assert.Equal(Now.AddSeconds(seconds), first.RetryAfter);
        Assert.Equal(first, second);
        Assert.Equal(first.RetryAfter, feed.Health.RetryAfter);
        Assert.Single(server.Requests);

        feed.Clock.Advance(TimeSpan.FromSeconds(1));
        Expect.Series(await feed.Fetch());
        Assert.Null(feed.Health.RetryAfter);
    }

    // 10:20 is 34 hours into the fixture. Minutes of margin are ours, as clocks differ.
    [Theory]
    [InlineData("minutely", "2026-06-05T10:21Z")]
    [InlineData("hourly", "2026-06-05T11:01Z")]
    [InlineData("daily", "2026-06-06T00:01Z")]
    public async Task Without_the_header_the_feeds_words_say_when_to_retry_after(string limit, string again)
    {
        using var server = new FeedServer(SentAway(limit));
        using var feed = new Feed(server.Url);

        FeedAnswer.Refused refused = Expect.Refusal(RefusalReason.TooManyRequests, await feed.Fetch());

        Assert.Equal(DateTimeOffset.Parse(again, CultureInfo.InvariantCulture), refused.RetryAfter);
        Assert.Contains("limit exceeded", Assert.IsType<FeedFault.LimitUsedUp>(refused.Fault).Said, StringComparison.Ordinal);
        Assert.Single(server.Requests);
    }

    [Fact]
    public async Task Without_header_and_words_a_minute_is_left()
    {
        using var server = new FeedServer(FeedServer.Status(429));
        using var feed = new Feed(server.Url);

        Assert.Equal(Now.AddMinutes(1), Expect.Refusal(RefusalReason.TooManyRequests, await feed.Fetch()).RetryAfter);
    }

    [Fact]
    public async Task Too_many_at_the_same_moment_is_tried_again()
    {
        using var server = new FeedServer(SentAway("concurrent"), SentAway("concurrent"), FeedServer.Good());
        using var feed = new Feed(server.Url);

        Expect.Series(await feed.Fetch());

        Assert.Equal(3, server.Requests.Count);
    }

    [Fact]
    public async Task An_overloaded_feed_that_says_when_is_taken_at_its_word()
    {
        using var server = new FeedServer(FeedServer.Status(503).WithHeader("Retry-After", "600"));
        using var feed = new Feed(server.Url);

        Assert.Equal(Now.AddMinutes(10), Expect.Refusal(RefusalReason.ServerFault, await feed.Fetch()).RetryAfter);
        Assert.Single(server.Requests);
    }

    private static IResponseBuilder SentAway(string limit) => FeedServer.Json(FeedFixture.Text($"limit-{limit}.json"), 429);
}

namespace WitherAdvisor.WeatherFeeds.Tests.Exchange;

/// <summary>Nothing hangs. The clock is ours: no test here waits for a real second.</summary>
public sealed class TimeLimitTests
{
    private static readonly TimeSpan Try = TimeSpan.FromSeconds(10);

    [Fact]
    public async Task A_body_that_drips_is_cut_off_by_the_limit_of_a_try()
    {
        var dripped = new TaskCompletionSource();
        using var server = new RawServer(async (_, client, cancel) =>
        {
            string body = FeedFixture.Text("three-days.json");
            await RawServer.Send(client, RawServer.Head(body), cancel);
            for (int place = 0; ; place = (place + 1) % body.Length)
            {
                await RawServer.Send(client, " ", cancel);
                if (place == 20)
                {
                    dripped.TrySetResult();
                }

                await Task.Delay(1, cancel);
            }
        });
        using var feed = new Feed(server.Url, ("Retries", "0"));
        Task<FeedAnswer> fetch = feed.Fetch();

        await dripped.Task.WaitAsync(TestContext.Current.CancellationToken);
        Assert.False(fetch.IsCompleted);
        feed.Clock.Advance(Try);

        Expect.Refusal(RefusalReason.TimedOut, await fetch);
    }

    [Fact]
    public async Task A_feed_that_never_answers_is_given_up_at_the_total_limit()
    {
        using var server = new RawServer((_, _, cancel) => Task.Delay(Timeout.InfiniteTimeSpan, cancel));
        using var feed = new Feed(server.Url, ("TotalLimit", "00:00:25"));
        Task<FeedAnswer> fetch = feed.Fetch();

        await server.Arrival();
        feed.Clock.Advance(Try);
        await server.Arrival();
        feed.Clock.Advance(Try);
        await server.Arrival();
        Assert.False(fetch.IsCompleted);
        feed.Clock.Advance(TimeSpan.FromSeconds(5));

        Assert.Equal(25, Assert.IsType<FeedFault.TookTooLong>(Expect.Refusal(RefusalReason.TimedOut, await fetch).Fault).WithinSeconds);
        Assert.Equal(FeedFixture.FetchedAt.AddSeconds(25), feed.Clock.GetUtcNow());
    }

    [Fact]
    public async Task A_try_that_timed_out_and_then_a_good_one_is_a_series()
    {
        using var server = new RawServer((number, client, cancel) =>
            number == 1 ? Task.Delay(Timeout.InfiniteTimeSpan, cancel) : RawServer.SendGood(client, cancel));
        using var feed = new Feed(server.Url);
        Task<FeedAnswer> fetch = feed.Fetch();

        await server.Arrival();
        feed.Clock.Advance(Try);

        Expect.Series(await fetch);
    }

    [Fact]
    public async Task The_total_limit_says_what_went_wrong_before_it()
    {
        using var server = new RawServer((number, client, cancel) => number == 1
            ? RawServer.Send(client, "HTTP/1.1 503 Overloaded\r\nContent-Length: 0\r\nConnection: close\r\n\r\n", cancel)
            : Task.Delay(Timeout.InfiniteTimeSpan, cancel));
        using var feed = new Feed(server.Url, ("TryLimit", "00:00:30"));
        Task<FeedAnswer> fetch = feed.Fetch();

        await server.Arrival();
        await server.Arrival();
        feed.Clock.Advance(TimeSpan.FromSeconds(30));

        Assert.Equal(
            new FeedFault.FeedFailed(503, null),
            Assert.IsType<FeedFault.TookTooLong>(Expect.Refusal(RefusalReason.TimedOut, await fetch).Fault).Before);
    }

    [Fact]
    public async Task Waiting_for_ones_turn_counts_within_the_total_limit()
    {
        using var server = new RawServer((_, _, cancel) => Task.Delay(Timeout.InfiniteTimeSpan, cancel));
        using var feed = new Feed(server.Url, ("TryLimit", "00:00:30"));
        Task<FeedAnswer> first = feed.Fetch(FeedFixture.QueryOf("first"));
        Task<FeedAnswer> second = feed.Fetch(FeedFixture.QueryOf("second"));

        await server.Arrival();
        feed.Clock.Advance(TimeSpan.FromSeconds(30));

        Expect.Refusal(RefusalReason.TimedOut, await first);
        Expect.Refusal(RefusalReason.TimedOut, await second);
        Assert.Equal(1, server.Connections);
    }
}

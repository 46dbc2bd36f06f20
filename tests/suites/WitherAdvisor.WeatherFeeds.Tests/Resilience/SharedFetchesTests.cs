using System.Globalization;
using System.Net.Sockets;

namespace WitherAdvisor.WeatherFeeds.Tests.Resilience;

/// <summary>No stampede: many who ask are one question to the feed, and few questions run at a time.</summary>
public sealed class SharedFetchesTests : IDisposable
{
    private readonly SemaphoreSlim released = new(0);

    public void Dispose() => released.Dispose();

    [Fact]
    public async Task Many_who_ask_for_the_same_site_at_once_share_one_request()
    {
        using RawServer server = Holding();
        using var feed = new Feed(server.Url);
        Task<FeedAnswer>[] fetches = [.. Enumerable.Range(0, 50).Select(_ => feed.Fetch(FeedFixture.QueryOf("invented-hill")))];

        await server.Arrival();
        released.Release();
        FeedAnswer[] answers = await Task.WhenAll(fetches);

        Assert.All(answers, answer => Assert.Same(answers[0], answer));
        Expect.Series(answers[0]);
        Assert.Equal(1, server.Connections);
    }

    [Fact]
    public async Task Who_asks_after_the_answer_asks_anew()
    {
        using var server = new FeedServer(FeedServer.Good());
        using var feed = new Feed(server.Url);
        Expect.Series(await feed.Fetch());
        Expect.Series(await feed.Fetch());

        Assert.Equal(2, server.Requests.Count);
    }

    [Fact]
    public async Task One_who_leaves_does_not_take_the_answer_from_the_others()
    {
        using RawServer server = Holding();
        using var feed = new Feed(server.Url);
        using var leaving = new CancellationTokenSource();
        Task<FeedAnswer> leaver = feed.Client.Fetch(FeedFixture.Query, leaving.Token);
        Task<FeedAnswer> stayer = feed.Fetch();

        await server.Arrival();
        await leaving.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => leaver);
        released.Release();

        Expect.Series(await stayer);
        Assert.Equal(1, server.Connections);
    }

    [Fact]
    public async Task No_more_run_at_a_time_than_the_operator_allows()
    {
        int running = 0;
        int most = 0;
        using var server = new RawServer(async (_, client, cancel) =>
        {
            int now = Interlocked.Increment(ref running);
            InterlockedMax(ref most, now);
            await released.WaitAsync(cancel);
            Interlocked.Decrement(ref running);
            await RawServer.SendGood(client, cancel);
        });
        using var feed = new Feed(server.Url, ("MostAtOnce", "2"));
        Task<FeedAnswer>[] fetches = [.. Enumerable.Range(0, 7).Select(site =>
            feed.Fetch(FeedFixture.QueryOf(site.ToString(CultureInfo.InvariantCulture))))];

        for (int served = 0; served < 7; served++)
        {
            await server.Arrival();
            released.Release();
        }

        Assert.All(await Task.WhenAll(fetches), answer => Expect.Series(answer));
        Assert.Equal((7, true), (server.Connections, most <= 2));
    }

    [Fact]
    public async Task Those_beyond_the_queue_are_refused_at_once()
    {
        using RawServer server = Holding();
        using var feed = new Feed(server.Url, ("MostWaiting", "1"));
        Task<FeedAnswer> first = feed.Fetch(FeedFixture.QueryOf("first"));
        Task<FeedAnswer> second = feed.Fetch(FeedFixture.QueryOf("second"));

        Expect.Refusal(RefusalReason.TooBusy, await feed.Fetch(FeedFixture.QueryOf("third")));

        released.Release(2);
        Expect.Series(await first);
        Expect.Series(await second);
    }

    [Fact]
    public async Task A_host_that_stops_does_not_wait_for_a_feed()
    {
        using RawServer server = Holding();
        var feed = new Feed(server.Url);
        Task<FeedAnswer> fetch = feed.Fetch();
        await server.Arrival();

        feed.Dispose();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => fetch);
    }

    private static void InterlockedMax(ref int most, int value)
    {
        int seen;
        while ((seen = Volatile.Read(ref most)) < value)
        {
            Interlocked.CompareExchange(ref most, value, seen);
        }
    }

    private RawServer Holding() => new(async (int _, TcpClient client, CancellationToken cancel) =>
    {
        await released.WaitAsync(cancel);
        await RawServer.SendGood(client, cancel);
    });
}

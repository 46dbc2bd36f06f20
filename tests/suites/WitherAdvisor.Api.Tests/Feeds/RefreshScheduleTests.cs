using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Api.Feeds;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.Loft.FeedRefresh;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.WeatherFeeds.Testing;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>Fetching by itself. The clock is ours; the feed says when a question has come.</summary>
public sealed class RefreshScheduleTests
{
    private static readonly (string Key, string Value) Hourly = ("FeedRefresh:Every", "01:00:00");

    [Fact]
    public async Task A_site_that_got_a_feed_is_fetched_soon_and_then_every_hour()
    {
        using RawServer server = new((_, client, cancel) => FakeFeed.SendJson(client, LongAnswer.Text(), cancel));
        await using FedService service = new(server.Url, Hourly);
        TestLoft loft = await service.Open();

        service.Clock.Advance(RefreshSchedule.LookEvery);
        await server.Arrival();
        FeedFetch first = await Fetch(service, loft, fetch => fetch.IsGood);
        // At most a tenth of an hour sooner.
        service.Clock.Advance(TimeSpan.FromMinutes(53));
        Assert.Equal(1, server.Connections);
        service.Clock.Advance(TimeSpan.FromMinutes(7));
        await server.Arrival();
        FeedFetch second = await Fetch(service, loft, fetch => fetch.FetchedAt > first.FetchedAt);

        Assert.Equal(FeedFixture.FetchedAt + RefreshSchedule.LookEvery, first.FetchedAt);
        Assert.True(second.IsGood);
        Assert.Equal(2, server.Connections);
    }

    [Fact]
    public async Task Refusals_of_every_kind_are_kept_and_the_next_fetch_still_comes()
    {
        using RawServer server = new((number, client, cancel) => number switch
        {
            1 => RawServer.Send(client, "HTTP/1.1 404 Gone\r\nContent-Length: 0\r\nConnection: close\r\n\r\n", cancel),
            2 => FakeFeed.SendJson(client, "[]", cancel),
            _ => FakeFeed.SendJson(client, LongAnswer.Text(), cancel),
        });
        await using FedService service = new(server.Url, Hourly);
        TestLoft loft = await service.Open();
        List<FeedFetch> came = [];

        for (int fetch = 1; fetch <= 3; fetch++)
        {
            service.Clock.Advance(fetch == 1 ? RefreshSchedule.LookEvery : DueSites.AfterRefusal);
            await server.Arrival();
            came.Add(await Fetch(service, loft, last => came.TrueForAll(before => before.FetchedAt < last.FetchedAt)));
        }

        Assert.Equal([false, false, true], came.Select(fetch => fetch.IsGood));
        (await service.Caller.Get("/health")).Expect(200);
    }

    [Fact]
    public async Task A_site_without_a_feed_is_left_alone()
    {
        using RawServer server = new((_, client, cancel) => FakeFeed.SendJson(client, LongAnswer.Text(), cancel));
        await using FedService service = new(server.Url, Hourly);
        TestLoft without = new(service.Caller);
        (await without.Caller.Put(without.Path, Bodies.Site())).Expect(201);
        TestLoft fed = await service.Open();

        service.Clock.Advance(RefreshSchedule.LookEvery);
        await Fetch(service, fed, fetch => fetch.IsGood);

        Assert.Equal(1, server.Connections);
        Assert.Null(await Last(service, without));
    }

    [Fact]
    public async Task A_store_that_fails_ends_neither_the_service_nor_the_fetching()
    {
        using RawServer server = new((_, client, cancel) => FakeFeed.SendJson(client, LongAnswer.Text(), cancel));
        await using FedService service = new(server.Url, Hourly);
        TestLoft loft = await service.Open();
        Change(service, "ALTER TABLE WeatherReading RENAME TO Away");

        service.Clock.Advance(RefreshSchedule.LookEvery);
        await server.Arrival();
        // Joins the fetch that fails, so that its end is known.
        (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(500);
        Assert.Null(await Last(service, loft));
        Change(service, "ALTER TABLE Away RENAME TO WeatherReading");
        service.Clock.Advance(DueSites.AfterRefusal);

        Assert.Equal(FeedFixture.FetchedAt + RefreshSchedule.LookEvery + DueSites.AfterRefusal, (await Fetch(service, loft, fetch => fetch.IsGood)).FetchedAt);
        (await service.Caller.Get("/health")).Expect(200);
    }

    /// <summary>What came of the last fetch, once it is of the kind waited for.</summary>
    private static async Task<FeedFetch> Fetch(FedService service, TestLoft loft, Predicate<FeedFetch> wanted)
    {
        while (true)
        {
            if (await Last(service, loft) is { } fetch && wanted(fetch))
            {
                return fetch;
            }

            await Task.Delay(5, TestContext.Current.CancellationToken);
        }
    }

    private static void Change(FedService service, string sql)
    {
        using SqliteConnection connection = new($"Data Source={service.DatabaseFile};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
#pragma warning disable CA2100 // the tests' own text
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }

    private static Task<FeedFetch?> Last(FedService service, TestLoft loft) =>
        service.Services.GetRequiredService<IFeedLog>().Last(loft.Site, FedService.Feed, TestContext.Current.CancellationToken);
}

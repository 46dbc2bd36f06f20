using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.WeatherFeeds;
using static WitherAdvisor.Store.Sqlite.Tests.Invented;
using static WitherAdvisor.Store.Sqlite.Tests.TemporaryStore;

namespace WitherAdvisor.Store.Sqlite.Tests;

public sealed class SqliteFeedLogTests : IAsyncLifetime
{
    private static readonly FeedFetch Good = new(
        "hill", "valley-feed", Monday, Refusal: null, HoursGot: 264, Monday.AddMinutes(-12),
        new FeedCell(9.25, 77.125, 1432.5), [new FeedNote.UnknownHours("precipitation", 2, Monday.AddHours(-30)), new FeedNote.CorrectedElevation(1432.5, 1550, -0.76375)]);

    private static readonly FeedFetch Refused = new(
        "hill", "valley-feed", Monday.AddHours(1), new FeedFault.LeftInPeace(new FeedFault.FeedFailed(503, "it said '茶'; \"so\"")), HoursGot: 0, NewestAnalysed: null, Cell: null, []);

    private readonly TemporaryStore store = new();

    public async ValueTask InitializeAsync() => await store.WithTrough();

    [Fact]
    public async Task Every_field_of_a_good_fetch_comes_back()
    {
        await store.Feeds.Add(Good, Cancel);

        AssertSame(Good, await store.Feeds.Last("hill", "valley-feed", Cancel));
        AssertSame(Good, await store.Feeds.LastGood("hill", "valley-feed", Cancel));
    }

    [Fact]
    public async Task A_cell_that_does_not_tell_its_elevation_has_none()
    {
        var fetch = Good with { Cell = new FeedCell(0, 0, null) };

        await store.Feeds.Add(fetch, Cancel);

        AssertSame(fetch, await store.Feeds.Last("hill", "valley-feed", Cancel));
    }

    [Fact]
    public async Task A_refusal_is_the_last_fetch_and_leaves_the_last_good_one_to_be_found()
    {
        await store.Feeds.Add(Good, Cancel);
        await store.Feeds.Add(Refused, Cancel);

        AssertSame(Refused, await store.Feeds.Last("hill", "valley-feed", Cancel));
        AssertSame(Good, await store.Feeds.LastGood("hill", "valley-feed", Cancel));
    }

    [Fact]
    public async Task Sentences_that_an_older_version_kept_come_back_as_said_then()
    {
        await store.Feeds.Add(Good, Cancel);
        await store.Feeds.Add(Refused, Cancel);
        store.Execute("UPDATE FeedFetch SET Refusal = 'The feed failed (status 503)' WHERE Refusal IS NOT NULL");
        store.Execute("UPDATE FeedFetch SET Notes = '[\"Rain is missing.\",\"The cell lies 120 m below.\"]' WHERE Refusal IS NULL");

        Assert.Equal(new FeedFault.SaidThen("The feed failed (status 503)"), (await store.Feeds.Last("hill", "valley-feed", Cancel))!.Refusal);
        Assert.Equal(
            [new FeedNote.SaidThen("Rain is missing."), new FeedNote.SaidThen("The cell lies 120 m below.")],
            (await store.Feeds.LastGood("hill", "valley-feed", Cancel))!.Notes);
    }

    [Fact]
    public async Task What_is_kept_of_a_fetch_is_a_code_with_its_arguments()
    {
        await store.Feeds.Add(Good, Cancel);
        await store.Feeds.Add(Refused with { Refusal = new FeedFault.LeftInPeace(new FeedFault.FeedFailed(503, null)) }, Cancel);

        Assert.Equal(
            [null, "{\"code\":\"left_in_peace\",\"before\":{\"code\":\"feed_failed\",\"status\":503,\"said\":null}}"],
            store.Column("SELECT Refusal FROM FeedFetch ORDER BY FetchedAtMs"));
        Assert.StartsWith(
            "[{\"code\":\"unknown_hours\",\"column\":\"precipitation\",\"hours\":2,\"first\":",
            (string)store.Column("SELECT Notes FROM FeedFetch ORDER BY FetchedAtMs")[0]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_last_fetch_is_by_time_and_not_by_order_of_keeping()
    {
        await store.Feeds.Add(Refused, Cancel);
        await store.Feeds.Add(Good, Cancel);

        AssertSame(Refused, await store.Feeds.Last("hill", "valley-feed", Cancel));
    }

    [Fact]
    public async Task A_second_result_of_the_same_millisecond_replaces_the_first()
    {
        await store.Feeds.Add(Good, Cancel);
        await store.Feeds.Add(Refused with { FetchedAt = Good.FetchedAt }, Cancel);

        Assert.False((await store.Feeds.Last("hill", "valley-feed", Cancel))!.IsGood);
        Assert.Null(await store.Feeds.LastGood("hill", "valley-feed", Cancel));
        Assert.Equal([1L], store.Column("SELECT COUNT(*) FROM FeedFetch"));
    }

    [Fact]
    public async Task Other_sites_and_other_feeds_are_not_asked()
    {
        await store.WithTrough("valley", "t1");
        await store.Feeds.Add(Good, Cancel);

        Assert.Null(await store.Feeds.Last("valley", "valley-feed", Cancel));
        Assert.Null(await store.Feeds.LastGood("hill", "other-feed", Cancel));
    }

    [Fact]
    public async Task A_fetch_for_an_unknown_site_is_refused_by_name()
    {
        var refusal = await Assert.ThrowsAsync<ParentNotFoundException>(() => store.Feeds.Add(Good with { SiteId = "nowhere" }, Cancel));

        Assert.Contains("'nowhere'", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Fetches_of_more_than_ninety_days_ago_are_forgotten_but_for_the_last_good_one()
    {
        DateTimeOffset now = Monday.AddDays(200);
        await store.Feeds.Add(Good, Cancel);
        await store.Feeds.Add(Good with { FetchedAt = Monday.AddHours(2) }, Cancel);
        await store.Feeds.Add(Refused with { FetchedAt = Monday.AddHours(3) }, Cancel);
        await store.Feeds.Add(Refused with { Feed = "left-feed", FetchedAt = Monday.AddHours(4) }, Cancel);
        await store.Feeds.Add(Refused with { FetchedAt = now.AddDays(-90) }, Cancel);
        await store.Feeds.Add(Refused with { FetchedAt = now }, Cancel);

        Assert.Equal(
            [Monday.AddHours(2), now.AddDays(-90), now],
            store.Column("SELECT FetchedAtMs FROM FeedFetch ORDER BY 1").Select(ms => DateTimeOffset.FromUnixTimeMilliseconds((long)ms!)));
        Assert.Equal(Monday.AddHours(2), (await store.Feeds.LastGood("hill", "valley-feed", Cancel))!.FetchedAt);
    }

    [Fact]
    public async Task Fetches_of_another_site_are_forgotten_by_its_own()
    {
        await store.WithTrough("valley", "t1");
        await store.Feeds.Add(Refused with { SiteId = "valley" }, Cancel);
        await store.Feeds.Add(Good with { FetchedAt = Monday.AddDays(200) }, Cancel);

        Assert.NotNull(await store.Feeds.Last("valley", "valley-feed", Cancel));
    }

    public ValueTask DisposeAsync()
    {
        store.Dispose();
        return ValueTask.CompletedTask;
    }

    private static void AssertSame(FeedFetch wanted, FeedFetch? found)
    {
        Assert.NotNull(found);
        Assert.Equal(wanted.Notes, found.Notes);
        Assert.Equal(wanted with { Notes = [] }, found with { Notes = [] });
        Assert.Equal(wanted.Refusal is null, found.IsGood);
    }
}

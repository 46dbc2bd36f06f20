using WitherAdvisor.Loft.Kept;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.WeatherFeeds;
using static WitherAdvisor.Store.Contract.Invented;

namespace WitherAdvisor.Store.Contract;

/// <summary>What came of asking feeds.</summary>
public abstract class FeedLogTests<TStore> : StoreSuite<TStore>
    where TStore : IStoreUnderTest, new()
{
    private static readonly FeedFetch Good = new(
        "hill", "valley-feed", Monday, Refusal: null, HoursGot: 264, Monday.AddMinutes(-12),
        new FeedCell(9.25, 77.125, 1432.5), [new FeedNote.UnknownHours("precipitation", 2, Monday.AddHours(-30)), new FeedNote.CorrectedElevation(1432.5, 1550, -0.76375)]);

    private static readonly FeedFetch Refused = new(
        "hill", "valley-feed", Monday.AddHours(1), new FeedFault.LeftInPeace(new FeedFault.FeedFailed(503, "it said '茶'; \"so\"")), HoursGot: 0, NewestAnalysed: null, Cell: null, []);

    protected override Task Prepare() => Store.WithTrough();

    [Fact]
    public async Task Every_field_of_a_good_fetch_comes_back()
    {
        await Store.Feeds.Add(Good, Cancel);

        AssertSame(Good, await Store.Feeds.Last("hill", "valley-feed", Cancel));
        AssertSame(Good, await Store.Feeds.LastGood("hill", "valley-feed", Cancel));
    }

    [Fact]
    public async Task A_cell_that_does_not_tell_its_elevation_has_none()
    {
        var fetch = Good with { Cell = new FeedCell(0, 0, null) };

        await Store.Feeds.Add(fetch, Cancel);

        AssertSame(fetch, await Store.Feeds.Last("hill", "valley-feed", Cancel));
    }

    [Fact]
    public async Task A_refusal_is_the_last_fetch_and_leaves_the_last_good_one_to_be_found()
    {
        await Store.Feeds.Add(Good, Cancel);
        await Store.Feeds.Add(Refused, Cancel);

        AssertSame(Refused, await Store.Feeds.Last("hill", "valley-feed", Cancel));
        AssertSame(Good, await Store.Feeds.LastGood("hill", "valley-feed", Cancel));
    }

    [Fact]
    public async Task The_last_fetch_is_by_time_and_not_by_order_of_keeping()
    {
        await Store.Feeds.Add(Refused, Cancel);
        await Store.Feeds.Add(Good, Cancel);

        AssertSame(Refused, await Store.Feeds.Last("hill", "valley-feed", Cancel));
    }

    [Fact]
    public async Task A_second_result_of_the_same_millisecond_replaces_the_first()
    {
        await Store.Feeds.Add(Good, Cancel);
        await Store.Feeds.Add(Refused with { FetchedAt = Good.FetchedAt }, Cancel);

        Assert.False((await Store.Feeds.Last("hill", "valley-feed", Cancel))!.IsGood);
        Assert.Null(await Store.Feeds.LastGood("hill", "valley-feed", Cancel));
    }

    [Fact]
    public async Task Other_sites_and_other_feeds_are_not_asked()
    {
        await Store.WithTrough("valley", "t1");
        await Store.Feeds.Add(Good, Cancel);

        Assert.Null(await Store.Feeds.Last("valley", "valley-feed", Cancel));
        Assert.Null(await Store.Feeds.LastGood("hill", "other-feed", Cancel));
    }

    [Fact]
    public async Task A_fetch_for_an_unknown_site_is_refused_by_name()
    {
        var refusal = await Assert.ThrowsAsync<ParentNotFoundException>(() => Store.Feeds.Add(Good with { SiteId = "nowhere" }, Cancel));

        Assert.Contains("'nowhere'", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Fetches_of_more_than_ninety_days_ago_are_forgotten_but_for_the_last_good_one()
    {
        DateTimeOffset now = Monday.AddDays(200);
        await Store.Feeds.Add(Good, Cancel);
        await Store.Feeds.Add(Good with { FetchedAt = Monday.AddHours(2) }, Cancel);
        await Store.Feeds.Add(Refused with { FetchedAt = Monday.AddHours(3) }, Cancel);
        await Store.Feeds.Add(Refused with { Feed = "left-feed", FetchedAt = Monday.AddHours(4) }, Cancel);
        await Store.Feeds.Add(Refused with { Feed = "remembered-feed", FetchedAt = now.AddDays(-IFeedLog.DaysKept) }, Cancel);
        await Store.Feeds.Add(Refused with { FetchedAt = now }, Cancel);

        Assert.Null(await Store.Feeds.Last("hill", "left-feed", Cancel));
        Assert.NotNull(await Store.Feeds.Last("hill", "remembered-feed", Cancel));
        Assert.Equal(now, (await Store.Feeds.Last("hill", "valley-feed", Cancel))!.FetchedAt);
        Assert.Equal(Monday.AddHours(2), (await Store.Feeds.LastGood("hill", "valley-feed", Cancel))!.FetchedAt);
    }

    [Fact]
    public async Task Fetches_of_another_site_are_forgotten_by_its_own()
    {
        await Store.WithTrough("valley", "t1");
        await Store.Feeds.Add(Refused with { SiteId = "valley" }, Cancel);
        await Store.Feeds.Add(Good with { FetchedAt = Monday.AddDays(200) }, Cancel);

        Assert.NotNull(await Store.Feeds.Last("valley", "valley-feed", Cancel));
    }

    private static void AssertSame(FeedFetch wanted, FeedFetch? found)
    {
        Assert.NotNull(found);
        Assert.Equal(wanted.Notes, found.Notes);
        Assert.Equal(wanted with { Notes = [] }, found with { Notes = [] });
        Assert.Equal(wanted.Refusal is null, found.IsGood);
    }
}

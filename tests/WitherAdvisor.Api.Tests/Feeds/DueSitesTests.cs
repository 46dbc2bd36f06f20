using WitherAdvisor.Api.Tests.Pages;
using WitherAdvisor.Loft.FeedRefresh;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Api.Tests.Feeds;

public sealed class DueSitesTests
{
    private static readonly DateTimeOffset Now = new(2026, 6, 5, 10, 20, 0, TimeSpan.Zero);
    private static readonly TimeSpan Every = TimeSpan.FromHours(1);
    private static readonly StoredSite Site = Sample.Site with { Id = "hill", Feed = "valley" };
    private static readonly RefreshOutcome Taken = new RefreshOutcome.Taken(
        1, 1, Now, Now, [], new("valley", "", FeedSource.Forecast, Now, Now, 7, 80.7, null, null));

    private readonly DueSites due = new(Every);

    [Fact]
    public void A_new_site_is_due_at_once_and_one_fetched_a_moment_ago_is_not()
    {
        Assert.True(due.IsDue(Site, null, Now));
        Assert.False(due.IsDue(Site with { Id = "dale" }, Now.AddMinutes(-10), Now));
        Assert.True(due.IsDue(Site with { Id = "glen" }, Now.AddHours(-1), Now));
    }

    [Fact]
    public void Sites_fetched_together_part_by_up_to_a_tenth_of_the_pace()
    {
        DateTimeOffset[] next = [.. Enumerable.Range(1, 200).Select(number => Next(Site with { Id = $"site-{number}" }))];

        Assert.All(next, time => Assert.InRange(time - Now, Every * 0.9, Every));
        Assert.True(next.Distinct().Count() > 100);
        Assert.True(next.Max() - next.Min() > Every * 0.08);
    }

    [Theory]
    [InlineData(null, 10)]
    [InlineData(2, 10)]
    [InlineData(45, 45)]
    public void A_feed_that_refused_is_asked_again_after_ten_minutes_but_not_before_it_wants(int? retryAfterMinutes, int minutes)
    {
        due.End(Site, new RefreshOutcome.Refused(new(RefusalReason.ServerFault, new WitherAdvisor.WeatherFeeds.FeedFault.FeedFailed(503, null), Now.AddMinutes(retryAfterMinutes ?? 0))), Now);

        Assert.False(due.IsDue(Site, null, Now.AddMinutes(minutes).AddSeconds(-1)));
        Assert.True(due.IsDue(Site, null, Now.AddMinutes(minutes)));
    }

    [Fact]
    public void A_fetch_that_nothing_came_of_counts_as_refused()
    {
        due.Begin(Site, Now);

        Assert.False(due.IsDue(Site, null, Now.AddMinutes(9)));
        Assert.True(due.IsDue(Site, null, Now.AddMinutes(10)));
    }

    [Fact]
    public void Another_feed_or_another_place_makes_a_site_due_at_once_and_another_name_does_not()
    {
        due.End(Site, Taken, Now);

        Assert.False(due.IsDue(Site with { Name = "Another" }, null, Now));
        Assert.True(due.IsDue(Site with { Feed = "other" }, null, Now));
        due.End(Site, Taken, Now);
        Assert.True(due.IsDue(Site with { Site = Site.Site with { ElevationM = 10 } }, null, Now));
    }

    private DateTimeOffset Next(StoredSite site)
    {
        due.End(site, Taken, Now);
        return Enumerable.Range(0, 3601).Select(second => Now.AddSeconds(second)).First(time => due.IsDue(site, null, time));
    }
}

namespace WitherAdvisor.WeatherFeeds.Tests;

public sealed class FeedHealthTests
{
    [Fact]
    public void A_feed_that_was_never_asked_has_no_history()
    {
        using var feed = new Feed("http://feed.invalid");

        Assert.Equal(new FeedHealth(Feed.Name, FeedBreaker.Closed, null, null, null, null), feed.Health);
    }

    [Fact]
    public async Task Health_remembers_the_last_good_and_the_last_error()
    {
        using var server = new FeedServer(FeedServer.Good(), FeedServer.Status(404));
        using var feed = new Feed(server.Url);
        await feed.Fetch();
        feed.Clock.Advance(TimeSpan.FromHours(1));
        FeedAnswer refused = await feed.Fetch();

        FeedHealth health = feed.Health;
        Assert.Equal(FeedFixture.FetchedAt, health.LastGoodAt);
        Assert.Equal(FeedFixture.FetchedAt.AddHours(1), health.LastErrorAt);
        Assert.Equal(refused, health.LastError);
    }
}

namespace WitherAdvisor.WeatherFeeds.Tests;

public sealed class LogTests
{
    [Theory]
    [InlineData("KeyHeader")]
    [InlineData("KeyQueryParameter")]
    public async Task A_refusal_is_logged_and_the_key_never_is(string place)
    {
        using var server = new FeedServer(FeedServer.Json("""{"error":true,"reason":"hush-hush is no key"}""", 401));
        using var feed = new Feed(server.Url, ("Key", "hush-hush"), (place, "X-Key"));

        await feed.Fetch();

        Assert.Contains("Weather feed invented gave nothing (KeyRefused)", feed.Log.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("hush", feed.Log.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tries_are_logged_so_that_an_operator_sees_a_feed_grow_ill()
    {
        using var server = new FeedServer(FeedServer.Status(500), FeedServer.Good());
        using var feed = new Feed(server.Url);

        Expect.Series(await feed.Fetch());

        Assert.Contains("OnRetry", feed.Log.Text, StringComparison.Ordinal);
    }
}

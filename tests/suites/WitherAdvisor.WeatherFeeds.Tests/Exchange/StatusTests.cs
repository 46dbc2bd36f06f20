using WireMock.ResponseBuilders;

namespace WitherAdvisor.WeatherFeeds.Tests.Exchange;

public sealed class StatusTests
{
    [Fact]
    public async Task A_failing_and_then_an_overloaded_and_then_a_good_feed_is_a_series()
    {
        using var server = new FeedServer(
            FeedServer.Json("""{"error":true,"reason":"Something went wrong."}""", 500),
            FeedServer.Json("""{"error":true,"reason":"The service is overloaded"}""", 503),
            FeedServer.Good());
        using var feed = new Feed(server.Url);

        Assert.Equal(72, Expect.Series(await feed.Fetch()).Readings.Count);
        Assert.Equal(3, server.Requests.Count);
    }

    [Theory]
    [InlineData(500)]
    [InlineData(502)]
    [InlineData(503)]
    [InlineData(504)]
    [InlineData(408)]
    public async Task A_feed_that_goes_on_failing_is_refused_after_three_tries(int status)
    {
        using var server = new FeedServer(FeedServer.Status(status));
        using var feed = new Feed(server.Url);

        Assert.Equal(new FeedFault.FeedFailed(status, null), Expect.Refusal(RefusalReason.ServerFault, await feed.Fetch()).Fault);
        Assert.Equal(3, server.Requests.Count);
    }

    [Fact]
    public async Task A_400_is_not_tried_again_and_its_reason_is_passed_on()
    {
        using var server = new FeedServer(FeedServer.Json(FeedFixture.Text("refused.json"), 400), FeedServer.Good());
        using var feed = new Feed(server.Url);

        FeedAnswer.Refused refused = Expect.Refusal(RefusalReason.BadRequest, await feed.Fetch());

        Assert.Equal(new FeedFault.QuestionRefused("Past days is invalid. Allowed range 0 to 93. Given 94."), refused.Fault);
        Assert.Single(server.Requests);
    }

    [Theory]
    [InlineData(400, RefusalReason.BadRequest)]
    [InlineData(401, RefusalReason.KeyRefused)]
    [InlineData(403, RefusalReason.KeyRefused)]
    [InlineData(404, RefusalReason.NotFound)]
    [InlineData(204, RefusalReason.UnexpectedStatus)]
    [InlineData(418, RefusalReason.UnexpectedStatus)]
    public async Task Other_statuses_are_refused_at_once_even_with_a_page_for_a_body(int status, RefusalReason reason)
    {
        IResponseBuilder answer = FeedServer.Status(status);
        using var server = new FeedServer(status == 204 ? answer : answer.WithBody("<html>no</html>"));
        using var feed = new Feed(server.Url);

        Expect.Refusal(reason, await feed.Fetch());

        Assert.Single(server.Requests);
    }

    [Theory]
    [InlineData(301)]
    [InlineData(302)]
    [InlineData(307)]
    [InlineData(308)]
    public async Task A_redirect_is_not_followed(int status)
    {
        using var elsewhere = new FeedServer(FeedServer.Good());
        using var server = new FeedServer(FeedServer.Status(status).WithHeader("Location", $"{elsewhere.Url}/v1/forecast?key=secret"));
        using var feed = new Feed(server.Url);

        FeedAnswer.Refused refused = Expect.Refusal(RefusalReason.Redirected, await feed.Fetch());

        Assert.Empty(elsewhere.Requests);
        Assert.Single(server.Requests);
        Assert.Equal(new FeedFault.PointsElsewhere(Elsewhere.Host, new Uri(elsewhere.Url).Host), refused.Fault);
    }

    [Fact]
    public async Task A_redirect_within_the_same_host_is_not_followed_either()
    {
        using var server = new FeedServer(FeedServer.Status(302).WithHeader("Location", "/v2/forecast"), FeedServer.Good());
        using var feed = new Feed(server.Url);

        Assert.Equal(
            new FeedFault.PointsElsewhere(Elsewhere.Path, null),
            Expect.Refusal(RefusalReason.Redirected, await feed.Fetch()).Fault);
        Assert.Single(server.Requests);
    }

    [Fact]
    public async Task Words_of_a_feed_are_cut_short_and_put_on_one_line_without_the_key()
    {
        string reason = $"bad\\r\\nkey hush&hush or hush%26hush {new string('x', 5_000)}";
        using var server = new FeedServer(FeedServer.Json($$"""{"reason":"{{reason}}","error":true}""", 400));
        using var feed = new Feed(server.Url, ("Key", "hush&hush"), ("KeyQueryParameter", "apikey"));

        string text = Assert.IsType<FeedFault.QuestionRefused>(Expect.Refusal(RefusalReason.BadRequest, await feed.Fetch()).Fault).Said!;

        Assert.Contains("bad  key *** or *** xxx", text, StringComparison.Ordinal);
        Assert.DoesNotContain("hush", text, StringComparison.Ordinal);
        Assert.True(text.Length < 300);
    }
}

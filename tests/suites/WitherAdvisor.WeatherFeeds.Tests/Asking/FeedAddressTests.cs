using WitherAdvisor.WeatherFeeds.Asking;
using WitherAdvisor.WeatherFeeds.Configuration;

namespace WitherAdvisor.WeatherFeeds.Tests.Asking;

public sealed class FeedAddressTests
{
    private static readonly FeedOptions Options = new()
    {
        ForecastBaseUrl = new("https://forecast.example/weather/"),
        ArchiveBaseUrl = new("https://archive.example"),
    };

    [Fact]
    public void Units_zone_and_elevation_are_asked_for_by_name() => Assert.Equal(
        "https://forecast.example/weather/v1/forecast?latitude=7&longitude=80.7&elevation=1500"
        + "&hourly=temperature_2m,relative_humidity_2m,dew_point_2m,precipitation,wind_speed_10m,surface_pressure,shortwave_radiation"
        + "&temperature_unit=celsius&wind_speed_unit=ms&precipitation_unit=mm&timeformat=iso8601&timezone=GMT"
        + "&past_days=1&forecast_days=2",
        FeedAddress.Of(FeedFixture.Query, Options)!.AbsoluteUri);

    [Fact]
    public void Days_are_asked_of_the_archive()
    {
        var query = new FeedQuery("a", -1.28333333, -36.81666667, -3.25, new FeedSpan.Days(new(2025, 12, 30), new(2026, 1, 2)));

        string address = FeedAddress.Of(query, Options)!.AbsoluteUri;

        Assert.StartsWith("https://archive.example/v1/archive?latitude=-1.2833&longitude=-36.8167&elevation=-3.", address, StringComparison.Ordinal);
        Assert.EndsWith("&start_date=2025-12-30&end_date=2026-01-02", address, StringComparison.Ordinal);
        Assert.DoesNotContain("past_days", address, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_feed_without_an_archive_says_so()
    {
        using var feed = new Feed("http://feed.invalid");

        Expect.Refusal(RefusalReason.NoArchive, await feed.Fetch(
            new("a", 7, 80.7, 1_500, new FeedSpan.Days(new(2026, 1, 1), new(2026, 1, 2)))));
    }

    [Fact]
    public async Task Json_is_asked_for_and_no_cache_on_the_way_is_to_answer()
    {
        using var server = new FeedServer(FeedServer.Good());
        using var feed = new Feed(server.Url);

        Expect.Series(await feed.Fetch());

        Assert.Equal("no-cache", Assert.Single(server.Requests[0].Headers!["Cache-Control"]));
        Assert.Equal("application/json", Assert.Single(server.Requests[0].Headers!["Accept"]));
    }

    [Fact]
    public async Task A_key_goes_into_the_query_where_the_operator_wants_it_there()
    {
        using var server = new FeedServer(FeedServer.Good());
        using var feed = new Feed(server.Url, ("Key", "a&b=c"), ("KeyQueryParameter", "apikey"));

        Expect.Series(await feed.Fetch());

        Assert.Equal("a&b=c", Assert.Single(server.Requests[0].Query!["apikey"]));
    }

    [Fact]
    public async Task A_key_goes_into_a_header_where_the_operator_wants_it_there()
    {
        using var server = new FeedServer(FeedServer.Good());
        using var feed = new Feed(server.Url, ("Key", "hush"), ("KeyHeader", "X-Feed-Key"));

        Expect.Series(await feed.Fetch());

        Assert.Equal("hush", Assert.Single(server.Requests[0].Headers!["X-Feed-Key"]));
        Assert.DoesNotContain("hush", server.Requests[0].Url, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(91, 0, 0)]
    [InlineData(double.NaN, 0, 0)]
    [InlineData(0, 181, 0)]
    [InlineData(0, 0, 9_001)]
    public void A_place_that_is_not_on_earth_is_a_bug_of_the_caller(double latitude, double longitude, double elevation) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new FeedQuery("a", latitude, longitude, elevation, new FeedSpan.Around(1, 1)));

    [Theory]
    [InlineData(-1, 1)]
    [InlineData(93, 1)]
    [InlineData(0, 0)]
    [InlineData(0, 17)]
    public void More_days_than_a_feed_gives_is_a_bug_of_the_caller(int past, int ahead) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new FeedSpan.Around(past, ahead));

    [Fact]
    public void Days_run_forward_and_for_a_year_at_most()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new FeedSpan.Days(new(2026, 1, 2), new(2026, 1, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FeedSpan.Days(new(2024, 1, 1), new(2025, 1, 1)));
        Assert.Equal(366, new FeedSpan.Days(new(2024, 1, 1), new(2024, 12, 31)).Last.DayOfYear);
    }
}

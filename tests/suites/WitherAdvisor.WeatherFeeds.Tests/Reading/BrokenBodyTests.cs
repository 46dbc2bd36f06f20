using WireMock.ResponseBuilders;

namespace WitherAdvisor.WeatherFeeds.Tests.Reading;

/// <summary>Status 200 and a body that is not what was agreed, through a real server: a clear refusal each.</summary>
public sealed class BrokenBodyTests
{
    private static readonly string Good = FeedFixture.Text("three-days.json");

    public static TheoryData<string, string, RefusalReason> NotEvenJson => new()
    {
        { "a web page", "<!DOCTYPE html><html><body>Sign in to the network</body></html>", RefusalReason.NotJson },
        { "plain text", "OK", RefusalReason.NotJson },
        { "nothing", "", RefusalReason.EmptyBody },
        { "white space", " \r\n\t ", RefusalReason.EmptyBody },
        { "half of it", Good[..(Good.Length / 2)], RefusalReason.BrokenJson },
        { "all but the last brace", Good.TrimEnd()[..^1], RefusalReason.BrokenJson },
        { "a fault while streaming", Good + "Unexpected error while streaming data: timeout", RefusalReason.BrokenJson },
        { "bare NaN", Good.Replace("\"precipitation\": [", "\"precipitation\": [NaN, ", StringComparison.Ordinal), RefusalReason.BrokenJson },
        { "bare Infinity", Good.Replace("\"elevation\": 1500.0", "\"elevation\": Infinity", StringComparison.Ordinal), RefusalReason.BrokenJson },
        { "deep nesting", new string('[', 100_000) + new string(']', 100_000), RefusalReason.BrokenJson },
        { "deep nesting beside the weather", Good.Replace("\"generationtime_ms\": 0.21", "\"x\": " + new string('[', 17) + new string(']', 17), StringComparison.Ordinal), RefusalReason.BrokenJson },
        { "a name twice", Good.Replace("\"elevation\": 1500.0", "\"elevation\": 1500.0, \"elevation\": 2", StringComparison.Ordinal), RefusalReason.BrokenJson },
    };

    public static TheoryData<string, string, RefusalReason> OfAnotherShape => new()
    {
        { "a list of places", $"[{Good}]", RefusalReason.WrongShape },
        { "an empty object", "{}", RefusalReason.WrongZone },
        { "an error with status 200", """{"reason":"No data is available for this location","error":true}""", RefusalReason.BadRequest },
        { "no hourly values", FeedFixture.Spoiled(body => body.Remove("hourly")), RefusalReason.WrongShape },
        { "no units", FeedFixture.Spoiled(body => body.Remove("hourly_units")), RefusalReason.WrongShape },
        { "no place", FeedFixture.Spoiled(body => body.Remove("latitude")), RefusalReason.WrongShape },
        { "hourly values in a list", FeedFixture.Spoiled(body => body["hourly"] = new System.Text.Json.Nodes.JsonArray()), RefusalReason.WrongShape },
        { "a column that is no list", FeedFixture.Spoiled(body => body["hourly"]!["precipitation"] = 0), RefusalReason.WrongShape },
        { "one rain too few", FeedFixture.Spoiled(body => body.Column("precipitation").RemoveAt(40)), RefusalReason.WrongShape },
        { "one wind too many", FeedFixture.Spoiled(body => body.Column("wind_speed_10m").Add(1.5)), RefusalReason.WrongShape },
        { "one time too few", FeedFixture.Spoiled(body => body.Column("time").RemoveAt(71)), RefusalReason.WrongShape },
        { "NaN in quotes", FeedFixture.Spoiled(body => body.Column("precipitation")[3] = "NaN"), RefusalReason.WrongShape },
        { "a number in quotes", FeedFixture.Spoiled(body => body.Column("temperature_2m")[3] = "17.5"), RefusalReason.WrongShape },
        { "true for rain", FeedFixture.Spoiled(body => body.Column("precipitation")[3] = true), RefusalReason.WrongShape },
        { "an object for rain", FeedFixture.Spoiled(body => body.Column("precipitation")[3] = new System.Text.Json.Nodes.JsonObject()), RefusalReason.WrongShape },
        { "no temperature", FeedFixture.Spoiled(body => body["hourly"]!.AsObject().Remove("temperature_2m")), RefusalReason.WrongShape },
        { "no rain", FeedFixture.Spoiled(body => body["hourly"]!.AsObject().Remove("precipitation")), RefusalReason.WrongShape },
        { "no times", FeedFixture.Spoiled(body => body["hourly"]!.AsObject().Remove("time")), RefusalReason.WrongShape },
        { "no hours", FeedFixture.Spoiled(body => body["hourly"]!.AsObject().ToList().ForEach(column => column.Value!.AsArray().Clear())), RefusalReason.NoUsableHours },
        { "a time that is a number", FeedFixture.Spoiled(body => body.Column("time")[0] = 1_780_000_000), RefusalReason.WrongShape },
        { "a time in words", FeedFixture.Spoiled(body => body.Column("time")[0] = "noon"), RefusalReason.WrongShape },
        { "a time with an offset", FeedFixture.Spoiled(body => body.Column("time")[0] = "2026-06-04T05:30+05:30"), RefusalReason.WrongShape },
    };

    [Theory]
    [MemberData(nameof(NotEvenJson))]
    public async Task What_is_not_whole_json_is_asked_for_once_more_and_then_refused(string what, string body, RefusalReason reason)
    {
        using var server = new FeedServer(FeedServer.Json(body));
        using var feed = new Feed(server.Url);

        Expect.Refusal(reason, await feed.Fetch());

        Assert.True(server.Requests.Count == 2, what);
    }

    [Theory]
    [MemberData(nameof(OfAnotherShape))]
    public async Task What_is_of_another_shape_is_refused_at_once(string what, string body, RefusalReason reason)
    {
        using var server = new FeedServer(FeedServer.Json(body));
        using var feed = new Feed(server.Url);

        Expect.Refusal(reason, await feed.Fetch());

        Assert.True(server.Requests.Count == 1, what);
    }

    [Fact]
    public async Task A_broken_body_and_then_a_good_one_is_a_series()
    {
        IResponseBuilder broken = FeedServer.Json(Good[..(Good.Length / 2)]);
        using var server = new FeedServer(broken, FeedServer.Good());
        using var feed = new Feed(server.Url);

        Assert.Equal(72, Expect.Series(await feed.Fetch()).Readings.Count);
    }
}

using System.Text.Json.Nodes;
using WitherAdvisor.WeatherFeeds.Tests;
using static WitherAdvisor.Api.Tests.Feeds.LongAnswer;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>A way for a feed to be ill, and what the service has to say to it.</summary>
/// <param name="Name">In words.</param>
/// <param name="Serve">Starts the feed.</param>
/// <param name="Status">Whether weather is taken or refused.</param>
/// <param name="Says">The reason of a refusal, or the note on what was taken; null where there is nothing to say.</param>
/// <param name="Assumes">What the advice says that it assumed for it; null where nothing had to be.</param>
internal sealed record FeedFault(string Name, Func<FakeFeed> Serve, string Status, string? Says, string? Assumes)
{
    /// <summary>What an advice says that knows no weather at all.</summary>
    private const string NoHistory = "no_history";

    private static readonly int[] RecentHours = [.. Enumerable.Range(Now - 19, 2)];

    public static IReadOnlyList<FeedFault> All { get; } =
    [
        Refused("a host name that nobody knows", "no_connection", () => new("http://feed.invalid")),
        Refused("a port that nobody listens on", "no_connection", FakeFeed.Gone),
        Refused("reset in mid-body", "connection_lost", () => FakeFeed.Raw((_, client, cancel) => FakeFeed.SendHalfAndReset(client, cancel))),
        Refused("a body that drips", "timed_out", () => FakeFeed.Slow(FakeFeed.Drip)),
        Refused("no answer at all", "timed_out", () => FakeFeed.Slow((_, cancel) => Task.Delay(Timeout.Infinite, cancel))),
        Taken("500, then good", null, null, () => FakeFeed.Recovering("500 Fault")),
        Taken("503, then good", null, null, () => FakeFeed.Recovering("503 Overloaded")),
        Refused("500 again and again", "server_fault", () => FakeFeed.Of(FeedServer.Status(500))),
        Refused("429 with Retry-After", "too_many_requests", () => FakeFeed.Of(FeedServer.Status(429).WithHeader("Retry-After", "3600"))),
        Refused("429 without Retry-After", "too_many_requests", () => FakeFeed.Of(FeedServer.Json(FeedFixture.Text("limit-hourly.json"), 429))),
        Refused("400 with its reason", "bad_request", () => FakeFeed.Of(FeedServer.Json(FeedFixture.Text("refused.json"), 400))),
        Refused("200 with a web page", "not_json", () => FakeFeed.Json("<!DOCTYPE html><html><body>Sign in</body></html>")),
        Refused("JSON cut off", "broken_json", () => FakeFeed.Json(Text()[..50_000])),
        Refused("an empty body", "empty_body", () => FakeFeed.Json("")),
        Refused("a body without end", "too_large", () => FakeFeed.Raw((_, client, cancel) => FakeFeed.Flood(client, cancel))),
        Refused("a gzip bomb", "too_large", () => FakeFeed.Raw((_, client, cancel) => FakeFeed.Bomb(client, cancel))),
        Refused("deep nesting", "broken_json", () => FakeFeed.Json(new string('[', 100_000))),
        Refused("NaN without quotes", "broken_json", () => FakeFeed.Json(Text().Replace("\"precipitation\":[", "\"precipitation\":[NaN,"))),
        Refused("NaN in quotes", "wrong_shape", Spoiled(body => body.Fill("precipitation", () => "NaN", RecentHours))),
        Taken("nulls at both ends", "unknown_hours", null,
            Spoiled(body => body.Fill("precipitation", () => null, 0, 1, Days * 24 - 2, Days * 24 - 1))),
        Taken("a column of nulls", "unknown_hours", "rain_unknown",
            Spoiled(body => body.Fill("precipitation", () => null, Enumerable.Range(0, Days * 24)))),
        Refused("lists of unequal length", "wrong_shape", Spoiled(body => body.Column("precipitation").RemoveAt(40))),
        Taken("no wind at all", "missing_column", "no_wind", Spoiled(body => body["hourly"]!.AsObject().Remove("wind_speed_10m"))),
        Refused("no temperature at all", "wrong_shape", Spoiled(body => body["hourly"]!.AsObject().Remove("temperature_2m"))),
        Refused("an unknown unit", "wrong_units", Spoiled(body => body["hourly_units"]!["precipitation"] = "cm")),
        Taken("another known unit", "converted_units", null, Spoiled(body => body["hourly_units"]!["wind_speed_10m"] = "km/h")),
        Refused("a list of places", "wrong_shape", () => FakeFeed.Json($"[{Text()}]")),
        Taken("relative humidity over 100 %", "clamped_humidity", null, Spoiled(body =>
        {
            body["hourly"]!.AsObject().Remove("dew_point_2m");
            body.Fill("relative_humidity_2m", () => 103, RecentHours);
        })),
        Taken("relative humidity far over 100 %", "impossible_values", "air_interpolated", Spoiled(body =>
        {
            body["hourly"]!.AsObject().Remove("dew_point_2m");
            body.Fill("relative_humidity_2m", () => 850, RecentHours);
        })),
        Taken("dew point over temperature", "refused_dew_point", null, Spoiled(body => body.Fill("dew_point_2m", () => 45.0, RecentHours))),
        Taken("missing hours", "missing_hours", "rain_unknown", Spoiled(body => body.Each(column =>
        {
            column.RemoveAt(Now - 19);
            column.RemoveAt(Now - 19);
        }))),
        Taken("an hour twice", "repeated_hours", null, Spoiled(body => body.Each(column => column.Insert(Now - 18, column[Now - 19]!.DeepClone())))),
        Taken("an hour twice with other rain", "contradicting_hours", "rain_unknown", Spoiled(body =>
        {
            body.Each(column => column.Insert(Now - 18, column[Now - 19]!.DeepClone()));
            body.Column("precipitation")[Now - 19] = 33.0;
        })),
        Taken("hours out of order", "unsorted_hours", null, Spoiled(body => body.Each(column =>
        {
            JsonNode? moved = column[Now - 19];
            column.RemoveAt(Now - 19);
            column.Add(moved);
        }))),
        Taken("the past only", "past_only", "air_not_forecast", Spoiled(body => body.Each(column =>
        {
            while (column.Count > Now + 1)
            {
                column.RemoveAt(column.Count - 1);
            }
        }))),
        Refused("a half-hour zone", "wrong_zone", () => FakeFeed.Json(FeedFixture.Text("half-hour-zone.json"))),
        Taken("days that are one too early", "shifted_days", null, Spoiled(body => Relabel(body, -1))),
        Taken("days that are one too late", "shifted_days", null, Spoiled(body => Relabel(body, 1))),
        Taken("an answer of yesterday", "old_answer", "weather_stale", () => FakeFeed.Raw((_, client, cancel) =>
            FakeFeed.SendJson(client, Text(), cancel, dated: FeedFixture.FetchedAt.AddHours(-24)))),
        Taken("-9999 for temperature", "impossible_values", "air_interpolated", Spoiled(body => body.Fill("temperature_2m", () => -9999, RecentHours))),
        Taken("-9999 for rain", "impossible_values", "rain_unknown", Spoiled(body => body.Fill("precipitation", () => -9999, RecentHours))),
        Taken("rain of 400 mm in an hour", "outside_range", "rain_unknown", Spoiled(body => body.Fill("precipitation", () => 400, RecentHours))),
    ];

    private static FeedFault Refused(string name, string reason, Func<FakeFeed> serve) => new(name, serve, "refused", reason, NoHistory);

    private static FeedFault Taken(string name, string? note, string? assumption, Func<FakeFeed> serve) =>
        new(name, serve, "taken", note, assumption);

    private static Func<FakeFeed> Spoiled(Action<JsonObject> change) => () => FakeFeed.Json(Text(change));

    private static void Relabel(JsonObject body, int days)
    {
        JsonArray labels = body.Column("time");
        for (int place = 0; place < labels.Count; place++)
        {
            labels[place] = Label(First.AddDays(days).AddHours(place));
        }
    }
}

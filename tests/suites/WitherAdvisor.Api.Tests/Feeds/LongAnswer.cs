using System.Text.Json.Nodes;
using WitherAdvisor.WeatherFeeds.Testing;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>What a feed answers when it is first asked: the invented days of fixtures/feed/three-days.json over and over, for 92 days and the coming three.</summary>
internal static class LongAnswer
{
    public const int Days = 95;

    /// <summary>Label of the first hour.</summary>
    public static readonly DateTimeOffset First = new(2026, 3, 5, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Place of the hour that has just passed when the answer is fetched.</summary>
    public static readonly int Now = (int)(FeedFixture.FetchedAt - First).TotalHours;

    public static JsonObject Body(Action<JsonObject>? change = null)
    {
        JsonObject body = FeedFixture.ThreeDays();
        foreach ((string name, JsonNode? column) in body["hourly"]!.AsObject().ToList())
        {
            JsonArray days = column!.AsArray();
            body["hourly"]![name] = new JsonArray([.. Enumerable.Range(0, Days * 24).Select(hour => name == "time"
                ? JsonValue.Create(Label(First.AddHours(hour)))
                : days[hour % days.Count]?.DeepClone())]);
        }

        change?.Invoke(body);
        return body;
    }

    public static string Text(Action<JsonObject>? change = null) => Body(change).ToJsonString();

    public static void Each(this JsonObject body, Action<JsonArray> change)
    {
        foreach ((_, JsonNode? column) in body["hourly"]!.AsObject())
        {
            change(column!.AsArray());
        }
    }

    /// <summary>Puts one value into some hours of a column.</summary>
    public static void Fill(this JsonObject body, string column, Func<JsonNode?> value, params IEnumerable<int> places)
    {
        foreach (int place in places)
        {
            body.Column(column)[place] = value();
        }
    }

    public static string Label(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mm");
}

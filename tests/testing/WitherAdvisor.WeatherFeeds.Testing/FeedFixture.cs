using System.Text;
using System.Text.Json.Nodes;

namespace WitherAdvisor.WeatherFeeds.Testing;

/// <summary>Invented answers of a feed, and ways to spoil them.</summary>
public static class FeedFixture
{
    /// <summary>When three-days.json is taken to have come: 34 hours into it.</summary>
    public static readonly DateTimeOffset FetchedAt = new(2026, 6, 5, 10, 20, 0, TimeSpan.Zero);

    public static readonly FeedQuery Query = QueryOf("invented-hill");

    public static FeedQuery QueryOf(string siteId) => new(siteId, 7, 80.7, 1_500, new FeedSpan.Around(1, 2));

    public static string Text(string file) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "fixtures", "feed", file));

    public static JsonObject ThreeDays() => JsonNode.Parse(Text("three-days.json"))!.AsObject();

    /// <summary>three-days.json with a change.</summary>
    public static string Spoiled(Action<JsonObject> change)
    {
        JsonObject body = ThreeDays();
        change(body);
        return body.ToJsonString();
    }

    public static JsonArray Column(this JsonObject body, string name) => body["hourly"]![name]!.AsArray();

    public static double Value(this JsonObject body, string name, int place) => body.Column(name)[place]!.GetValue<double>();

    public static byte[] Utf8(this string text) => Encoding.UTF8.GetBytes(text);
}

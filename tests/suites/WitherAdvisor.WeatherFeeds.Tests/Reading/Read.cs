using System.Text.Json.Nodes;
using WitherAdvisor.WeatherFeeds.Reading;

namespace WitherAdvisor.WeatherFeeds.Tests.Reading;

/// <summary>Reads a body as if it had just come for the invented hill.</summary>
internal static class Read
{
    public static readonly AnswerOrigin Origin = new(
        FeedFixture.Query, "invented", "Invented weather", Key: null, FeedFixture.FetchedAt, FeedFixture.FetchedAt);

    public static FeedAnswer Text(string body, AnswerOrigin? origin = null) => AnswerReader.Read(body.Utf8(), origin ?? Origin);

    public static FeedAnswer Spoiled(Action<JsonObject> change, AnswerOrigin? origin = null) =>
        Text(FeedFixture.Spoiled(change), origin);

    public static FeedAnswer.Series Good(Action<JsonObject>? change = null, AnswerOrigin? origin = null) =>
        Expect.Series(Spoiled(change ?? (_ => { }), origin));
}

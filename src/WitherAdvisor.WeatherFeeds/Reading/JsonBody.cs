using System.Text.Json;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Reading;

/// <summary>Takes a body apart as strict JSON.</summary>
internal static class JsonBody
{
    /// <summary>An answer is four levels deep.</summary>
    private const int MostLevels = 16;

    private static readonly JsonDocumentOptions Strict = new()
    {
        MaxDepth = MostLevels,
        AllowDuplicateProperties = false,
    };

    /// <summary>Null where it is JSON, and then the caller disposes of the document.</summary>
    public static Refused? Parse(ReadOnlyMemory<byte> body, out JsonDocument? document)
    {
        document = null;
        ReadOnlyMemory<byte> text = WithoutMark(body);
        ReadOnlySpan<byte> start = text.Span.TrimStart(" \t\r\n"u8);
        if (start.IsEmpty)
        {
            return new(RefusalReason.EmptyBody, "The feed's answer is empty.");
        }

        if (start[0] is not ((byte)'{' or (byte)'['))
        {
            return new(RefusalReason.NotJson, start[0] == (byte)'<'
                ? "The feed answered with a web page, not with weather: a sign-in page of the network, or a wrong address."
                : "The feed answered with text that is not JSON.");
        }

        try
        {
            document = JsonDocument.Parse(text, Strict);
            return null;
        }
        catch (JsonException broken)
        {
            return new(RefusalReason.BrokenJson,
                $"The feed's JSON breaks off, repeats a name, is over {MostLevels} levels deep or holds what JSON cannot, at line {broken.LineNumber + 1}, byte {broken.BytePositionInLine} of {text.Length} in all.");
        }
    }

    private static ReadOnlyMemory<byte> WithoutMark(ReadOnlyMemory<byte> body) =>
        body.Span.StartsWith("\uFEFF"u8) ? body[3..] : body;
}

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
            return new(RefusalReason.EmptyBody, new FeedFault.EmptyAnswer());
        }

        if (start[0] is not ((byte)'{' or (byte)'['))
        {
            return new(RefusalReason.NotJson, start[0] == (byte)'<'
                ? new FeedFault.WebPage()
                : new FeedFault.OtherText());
        }

        try
        {
            document = JsonDocument.Parse(text, Strict);
            return null;
        }
        catch (JsonException broken)
        {
            return new(RefusalReason.BrokenJson, new FeedFault.BrokenJson(MostLevels, broken.LineNumber + 1, broken.BytePositionInLine, text.Length));
        }
    }

    private static ReadOnlyMemory<byte> WithoutMark(ReadOnlyMemory<byte> body) =>
        body.Span.StartsWith("\uFEFF"u8) ? body[3..] : body;
}

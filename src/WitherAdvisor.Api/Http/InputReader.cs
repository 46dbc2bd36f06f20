using System.Text.Json;
using System.Text.Unicode;
using WitherAdvisor.Fields;
using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Http;

/// <summary>Reads a request from JSON: first its form, then each field, then whether the fields fit each other.</summary>
internal static class InputReader
{
    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = JsonRules.DeepestNesting };

    public static Refusable<T> Read<T>(ReadOnlyMemory<byte> utf8)
        where T : class
    {
        if (!Utf8.IsValid(utf8.Span))
        {
            return new(null, Problem.Malformed("The body is not UTF-8."));
        }

        ReadOnlyMemory<byte> json = WithoutByteOrderMark(utf8);
        try
        {
            using JsonDocument document = JsonDocument.Parse(json, Strict);
            return Read<T>(document.RootElement);
        }
        catch (JsonException malformed)
        {
            return new(null, Problem.Malformed(MalformedJson.Describe(json.Span, malformed)));
        }
        catch (InvalidOperationException)
        {
            // Thrown for escapes such as \ud800 that stand for no character.
            return new(null, Problem.Malformed("A text in the body holds half a surrogate pair."));
        }
    }

    public static Refusable<T> Read<T>(JsonElement root)
        where T : class
    {
        List<FieldError> errors = [];
        return CheckedInput.Read<T>(root, errors) is { } input ? new(input, null) : new(null, Problem.InvalidInput(errors));
    }

    private static ReadOnlyMemory<byte> WithoutByteOrderMark(ReadOnlyMemory<byte> utf8) =>
        utf8.Span.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;
}

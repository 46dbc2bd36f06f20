using System.Text;
using System.Text.Json;
using WitherAdvisor.Fields.Json;

namespace WitherAdvisor.Api.Http;

/// <summary>Says where JSON breaks off, in the caller's words: field, line and place in the line.</summary>
internal static class MalformedJson
{
    public static string Describe(ReadOnlySpan<byte> json, JsonException failure)
    {
        string field = LastField(json);
        string at = field.Length == 0 ? "" : $" at {field}";
        return $"Not JSON{at}, line {failure.LineNumber + 1}, byte {failure.BytePositionInLine + 1}.";
    }

    private static string LastField(ReadOnlySpan<byte> json)
    {
        Utf8JsonReader reader = new(json, new JsonReaderOptions { MaxDepth = JsonRules.DeepestNesting });
        Stack<string> names = new(["$"]);
        try
        {
            while (reader.Read())
            {
                Follow(ref reader, names);
            }
        }
        catch (JsonException)
        {
            // Where it breaks off is what is asked for.
        }

        return string.Join('.', names.Reverse().Skip(1).Where(name => name.Length > 0));
    }

    private static void Follow(ref Utf8JsonReader reader, Stack<string> names)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.PropertyName:
                names.Pop();
                names.Push(Encoding.UTF8.GetString(reader.ValueSpan));
                break;
            case JsonTokenType.StartObject or JsonTokenType.StartArray:
                names.Push("");
                break;
            case JsonTokenType.EndObject or JsonTokenType.EndArray:
                names.Pop();
                break;
            default:
                break;
        }
    }
}

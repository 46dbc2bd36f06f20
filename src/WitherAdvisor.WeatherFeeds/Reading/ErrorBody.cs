using System.Text.Json;

namespace WitherAdvisor.WeatherFeeds.Reading;

/// <summary>The feed's own words in {"error":true,"reason":"..."}.</summary>
internal static class ErrorBody
{
    /// <summary>Null where the body tells of no error; empty where it gives no reason for one.</summary>
    public static string? Reason(ReadOnlyMemory<byte> body)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(body);
            return Reason(document.RootElement);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    public static string? Reason(JsonElement root) =>
        root.ValueKind == JsonValueKind.Object
        && root.TryGetProperty("error", out JsonElement error) && error.ValueKind == JsonValueKind.True
            ? root.TryGetProperty("reason", out JsonElement reason) && reason.ValueKind == JsonValueKind.String
                ? reason.GetString()
                : ""
            : null;
}

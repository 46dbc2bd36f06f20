using System.Text.Json;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Reading;

/// <summary>
/// Refuses hours labelled in any zone but GMT, which was asked. A server applies one offset, that of now, to all hours, and
/// rounds half-hour offsets where it picks values: labels in local time cannot be brought back to instants for certain.
/// </summary>
internal static class ZoneCheck
{
    private static readonly string[] Gmt = ["GMT", "UTC", "Etc/GMT", "Etc/UTC", "Z"];

    /// <summary>Null where the labels are GMT.</summary>
    public static Refused? Refusal(JsonElement root)
    {
        string zone = root.TryGetProperty("timezone", out JsonElement name) && name.ValueKind == JsonValueKind.String
            ? name.GetString()!
            : "";
        bool hasOffset = root.TryGetProperty("utc_offset_seconds", out JsonElement offset);
        if (!hasOffset || offset.ValueKind != JsonValueKind.Number || !offset.TryGetDouble(out double seconds))
        {
            return new(RefusalReason.WrongZone, new FeedFault.OffsetUnsaid());
        }

        if (seconds != 0)
        {
            return new(RefusalReason.WrongZone, new FeedFault.OffGmt(seconds));
        }

        // Europe/London has offset 0 in winter, and a server that knew summer time would label summer hours by it.
        return Gmt.Contains(zone, StringComparer.Ordinal)
            ? null
            : new(RefusalReason.WrongZone, new FeedFault.OtherZone());
    }
}

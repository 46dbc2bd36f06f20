using System.Globalization;
using System.Text.Json;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Reading;

/// <summary>Reads the times of an answer, which carry no offset: they are GMT, as was checked before.</summary>
internal static class HourLabels
{
    private static readonly string[] Forms =
        ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd'T'HH:mm'Z'", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd'T'HH:mm:ss'Z'"];

    /// <summary>Null where every label is a whole hour.</summary>
    public static Refused? Read(JsonElement labels, out DateTimeOffset[] hours)
    {
        hours = new DateTimeOffset[labels.GetArrayLength()];
        int place = 0;
        foreach (JsonElement label in labels.EnumerateArray())
        {
            if (label.ValueKind != JsonValueKind.String || !TryRead(label.GetString()!, out DateTimeOffset hour))
            {
                return new(RefusalReason.WrongShape, $"Time {place + 1} of the feed's answer is not written as yyyy-mm-ddThh:mm.");
            }

            if (hour.Ticks % TimeSpan.TicksPerHour != 0)
            {
                return new(RefusalReason.WrongZone,
                    $"Time {place + 1} of the feed's answer is not a whole hour of GMT: labels of a half-hour zone, or no hourly values.");
            }

            hours[place++] = hour;
        }

        return null;
    }

    private static bool TryRead(string label, out DateTimeOffset hour) => DateTimeOffset.TryParseExact(
        label, Forms, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out hour);
}

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
                return new(RefusalReason.WrongShape, new FeedFault.TimeUnreadable(place + 1));
            }

            if (hour.Ticks % TimeSpan.TicksPerHour != 0)
            {
                return new(RefusalReason.WrongZone, new FeedFault.TimeNotWhole(place + 1));
            }

            hours[place++] = hour;
        }

        return null;
    }

    private static bool TryRead(string label, out DateTimeOffset hour) => DateTimeOffset.TryParseExact(
        label, Forms, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out hour);
}

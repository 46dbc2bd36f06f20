using NodaTime;
using NodaTime.Text;

namespace WitherAdvisor.Fields;

/// <summary>Instants as text, by RFC 3339.</summary>
internal static class Rfc3339
{
    // .NET knows no offset beyond this, and no zone on Earth has one.
    private static readonly Offset Farthest = Offset.FromHours(14);

    // Our parser takes it for the next midnight; RFC 3339 ends the hours at 23.
    private const string HourPastTheLast = "T24:";

    /// <summary>Null where the text is not a time with seconds and offset.</summary>
    public static DateTimeOffset? Parse(string text)
    {
        ParseResult<OffsetDateTime> parsed = OffsetDateTimePattern.Rfc3339.Parse(text);
        return parsed.Success && !text.Contains(HourPastTheLast, StringComparison.OrdinalIgnoreCase) && parsed.Value is var time
            && time.Offset <= Farthest && time.Offset >= -Farthest
            && time.Year is > 1 and < 9999
                ? time.ToDateTimeOffset()
                : null;
    }

    /// <summary>Seconds always, fractions where there are any, Z where the offset is 0.</summary>
    public static string Format(DateTimeOffset time) =>
        OffsetDateTimePattern.Rfc3339.Format(OffsetDateTime.FromDateTimeOffset(time));
}

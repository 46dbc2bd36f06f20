using WitherAdvisor.Readings;
using WitherAdvisor.WeatherFeeds.Asking;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Screening;

/// <summary>Compares the hours that came with those asked for.</summary>
internal static class SpanCheck
{
    private static readonly TimeSpan Day = TimeSpan.FromDays(1);

    private static readonly TimeSpan Hour = TimeSpan.FromHours(1);

    /// <summary>Null where there is something to go by.</summary>
    public static Refused? Refusal(List<WeatherReading> readings, AskedHours asked)
    {
        if (!readings.Exists(hour => asked.Holds(hour.Time) && hour.DryBulbC is not null))
        {
            return new(RefusalReason.NoUsableHours,
                $"None of the hours from {Label(asked.First)} to {Label(asked.Last)} came with a temperature.");
        }

        // Labelled every three hours, a sum "of the hour before" may be one of three: nothing tells.
        bool sparse = readings.Count > 2 && readings.Zip(readings.Skip(1)).All(pair => pair.Second.Time - pair.First.Time > Hour);
        return sparse ? new(RefusalReason.WrongShape, "The feed's values are not hourly.") : null;
    }

    /// <summary>Hours more than a day outside were not asked by any clock; a day is left for clocks that differ by one.</summary>
    public static List<WeatherReading> Within(List<WeatherReading> readings, AskedHours asked, NoteBook notes)
    {
        foreach (WeatherReading hour in readings.Where(hour => !Near(hour, asked)))
        {
            notes.Count("outside_hours", "Hours far outside those asked for were left out", hour.Time);
        }

        return readings.FindAll(hour => Near(hour, asked));
    }

    public static void NoteMissing(List<WeatherReading> readings, AskedHours asked, AnswerOrigin origin, NoteBook notes)
    {
        var came = readings.Select(hour => hour.Time).ToHashSet();
        for (DateTimeOffset hour = asked.First; hour <= asked.Last; hour += Hour)
        {
            if (!came.Contains(hour))
            {
                notes.Count("missing_hours", "Nothing is known of hours that were asked for", hour);
            }
        }

        if (origin.Query.Span is FeedSpan.Around && readings[^1].Time <= origin.FetchedAt)
        {
            notes.Say("past_only", $"The feed gave no hour after {Label(origin.FetchedAt)}: nothing is foretold.");
        }
    }

    /// <summary>Says where the feed's first and last label are whole days off.</summary>
    public static void NoteShift(AskedHours came, AskedHours asked, AnswerOrigin origin, NoteBook notes)
    {
        TimeSpan shift = came.First - asked.First;
        bool aroundMidnight = AskedHours.Of(origin.Query.Span, origin.FetchedAt - TimeSpan.FromMinutes(10))
            != AskedHours.Of(origin.Query.Span, origin.FetchedAt + TimeSpan.FromMinutes(10));
        if (shift.Duration() >= Day && came.Last - asked.Last == shift && !aroundMidnight)
        {
            notes.Say("shifted_days",
                $"The feed's days are {shift.TotalDays:+0;-0} of those asked for: its clock or ours is off, or an old answer was kept on the way.");
        }
    }

    private static bool Near(WeatherReading hour, AskedHours asked) =>
        hour.Time >= asked.First - Day && hour.Time <= asked.Last + Day;

    private static string Label(DateTimeOffset time) => time.ToString("yyyy-MM-dd'T'HH:mm'Z'");
}

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
            return new(RefusalReason.NoUsableHours, new FeedFault.NoUsableHours(asked.First, asked.Last));
        }

        // Labelled every three hours, a sum "of the hour before" may be one of three: nothing tells.
        bool sparse = readings.Count > 2 && readings.Zip(readings.Skip(1)).All(pair => pair.Second.Time - pair.First.Time > Hour);
        return sparse ? new(RefusalReason.WrongShape, new FeedFault.NotHourly()) : null;
    }

    /// <summary>Hours more than a day outside were not asked by any clock; a day is left for clocks that differ by one.</summary>
    public static List<WeatherReading> Within(List<WeatherReading> readings, AskedHours asked, NoteBook notes)
    {
        foreach (WeatherReading hour in readings.Where(hour => !Near(hour, asked)))
        {
            notes.Count(new FeedNote.OutsideHours(1, hour.Time));
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
                notes.Count(new FeedNote.MissingHours(1, hour));
            }
        }

        if (origin.Query.Span is FeedSpan.Around && readings[^1].Time <= origin.FetchedAt)
        {
            notes.Say(new FeedNote.PastOnly(origin.FetchedAt));
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
            notes.Say(new FeedNote.ShiftedDays(shift.TotalDays));
        }
    }

    private static bool Near(WeatherReading hour, AskedHours asked) =>
        hour.Time >= asked.First - Day && hour.Time <= asked.Last + Day;
}

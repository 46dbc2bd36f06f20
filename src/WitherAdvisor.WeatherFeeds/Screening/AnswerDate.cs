namespace WitherAdvisor.WeatherFeeds.Screening;

/// <summary>Compares the answer's own date with our clock.</summary>
internal static class AnswerDate
{
    /// <summary>Clocks that nobody minds differ less; caches of feeds hold answers for minutes.</summary>
    private static readonly TimeSpan Tolerance = TimeSpan.FromMinutes(10);

    /// <summary>The instant that parts what has been from what was foretold: never later than the answer was made.</summary>
    public static DateTimeOffset AsOf(AnswerOrigin origin, NoteBook notes)
    {
        TimeSpan? age = origin.FetchedAt - origin.DatedAt;
        if (age > Tolerance)
        {
            notes.Say("old_answer",
                $"The answer is dated {Words(age.Value)} before it came: an old one was kept on the way, or a clock is wrong. Hours after its date count as foretold.");
            return origin.DatedAt!.Value;
        }

        if (age < -Tolerance)
        {
            notes.Say("clock_differs", $"The answer is dated {Words(-age.Value)} after our clock: one of the clocks is wrong.");
        }

        return origin.FetchedAt;
    }

    private static string Words(TimeSpan time) => time < TimeSpan.FromHours(2) ? $"{time.TotalMinutes:0} min" : $"{time.TotalHours:0} h";
}

namespace WitherAdvisor.WeatherFeeds.Screening;

/// <summary>Compares the answer's own date with our clock.</summary>
internal static class AnswerDate
{
    /// <summary>Clocks that nobody minds differ less; caches of feeds hold answers for minutes.</summary>
    private static readonly TimeSpan Tolerance = TimeSpan.FromMinutes(10);

    /// <summary>The instant that parts what has been from what was forecast: never later than the answer was made.</summary>
    public static DateTimeOffset AsOf(AnswerOrigin origin, NoteBook notes)
    {
        TimeSpan? age = origin.FetchedAt - origin.DatedAt;
        if (age > Tolerance)
        {
            notes.Say(new FeedNote.OldAnswer(age.Value));
            return origin.DatedAt!.Value;
        }

        if (age < -Tolerance)
        {
            notes.Say(new FeedNote.ClockDiffers(-age.Value));
        }

        return origin.FetchedAt;
    }
}

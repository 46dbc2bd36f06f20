using WitherAdvisor.Readings;

namespace WitherAdvisor.WeatherFeeds;

/// <summary>What came of a fetch: readings, or a refusal that says why.</summary>
public abstract record FeedAnswer
{
    private FeedAnswer()
    {
    }

    /// <summary>Hours that can be believed.</summary>
    /// <param name="Readings">
    /// By time, one an hour, offset zero. Unknown values are null and wholly unknown hours are absent, never filled.
    /// Of humidity each holds the dew point, or the relative humidity where the dew point is unknown.
    /// </param>
    /// <param name="Notes">What was missing, corrected or left out.</param>
    /// <param name="Provenance">Where and when they come from.</param>
    public sealed record Series(
        IReadOnlyList<WeatherReading> Readings,
        IReadOnlyList<FeedNote> Notes,
        FeedProvenance Provenance) : FeedAnswer;

    /// <summary>Nothing that could be believed.</summary>
    /// <param name="Reason">Which kind of fault.</param>
    /// <param name="Fault">Which fault exactly.</param>
    /// <param name="RetryAfter">Do not ask again before then; null where nothing is known.</param>
    public sealed record Refused(
        RefusalReason Reason,
        FeedFault Fault,
        DateTimeOffset? RetryAfter = null) : FeedAnswer;
}

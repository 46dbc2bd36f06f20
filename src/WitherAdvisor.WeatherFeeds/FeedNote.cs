using System.Text.Json;

namespace WitherAdvisor.WeatherFeeds;

/// <summary>
/// Something that a reader of the series should know: one case for each, with what belongs to it. The names of cases and
/// members are kept in databases.
/// </summary>
public abstract record FeedNote
{
    private FeedNote()
    {
    }

    /// <summary>snake_case name of the case, for example "missing_hours".</summary>
    public string Code => JsonNamingPolicy.SnakeCaseLower.ConvertName(GetType().Name);

    /// <summary>Something that befell hours.</summary>
    /// <param name="Hours">How many.</param>
    /// <param name="First">The first of them.</param>
    public abstract record Counted(int Hours, DateTimeOffset First) : FeedNote;

    /// <summary>A column is absent: unknown in all hours.</summary>
    public sealed record MissingColumn(string Column) : FeedNote;

    /// <summary>A column came in another unit than asked, and was converted.</summary>
    public sealed record ConvertedUnits(string Column, string Came, string Asked) : FeedNote;

    /// <summary>A value is unknown.</summary>
    public sealed record UnknownHours(string Column, int Hours, DateTimeOffset First) : Counted(Hours, First);

    /// <summary>A value that no weather can have was taken as unknown.</summary>
    public sealed record ImpossibleValues(string Column, int Hours, DateTimeOffset First) : Counted(Hours, First);

    /// <summary>An hour came more than once.</summary>
    public sealed record RepeatedHours(int Hours, DateTimeOffset First) : Counted(Hours, First);

    /// <summary>Different values came for one hour, which was taken as unknown.</summary>
    public sealed record ContradictingHours(string Column, int Hours, DateTimeOffset First) : Counted(Hours, First);

    /// <summary>The dew point was slightly above the dry bulb and was set to it.</summary>
    public sealed record ClampedDewPoint(int Hours, DateTimeOffset First) : Counted(Hours, First);

    /// <summary>The dew point stood too far over the dry bulb and was taken as unknown.</summary>
    public sealed record RefusedDewPoint(double OverK, int Hours, DateTimeOffset First) : Counted(Hours, First);

    /// <summary>The relative humidity was slightly above 100 % and was set to it.</summary>
    public sealed record ClampedHumidity(int Hours, DateTimeOffset First) : Counted(Hours, First);

    /// <summary>Hours far outside those asked for were left out.</summary>
    public sealed record OutsideHours(int Hours, DateTimeOffset First) : Counted(Hours, First);

    /// <summary>Hours that were asked for did not come.</summary>
    public sealed record MissingHours(int Hours, DateTimeOffset First) : Counted(Hours, First);

    /// <summary>A value outside of what callers may send was not kept.</summary>
    /// <param name="Field">As requests name it.</param>
    /// <param name="Unit">Null for a bare number.</param>
    public sealed record OutsideRange(string Field, double Least, double Most, string? Unit, int Hours, DateTimeOffset First)
        : Counted(Hours, First);

    /// <summary>The answer is dated some time before it came.</summary>
    public sealed record OldAnswer(TimeSpan Before) : FeedNote;

    /// <summary>The answer is dated some time after our clock.</summary>
    public sealed record ClockDiffers(TimeSpan After) : FeedNote;

    /// <summary>The feed does not say for which elevation its values are.</summary>
    public sealed record UnknownElevation : FeedNote;

    /// <summary>Values were brought from the feed's elevation to the site's.</summary>
    /// <param name="MovedK">What was added to temperatures.</param>
    public sealed record CorrectedElevation(double FeedM, double SiteM, double MovedK) : FeedNote;

    /// <summary>The weather is of a place some way off.</summary>
    public sealed record FarCell(double AwayKm) : FeedNote;

    /// <summary>The hours were not in the order of time and were put in order.</summary>
    public sealed record UnsortedHours : FeedNote;

    /// <summary>No hour came after an instant: there is no forecast.</summary>
    public sealed record PastOnly(DateTimeOffset After) : FeedNote;

    /// <summary>The days are whole days off those asked for.</summary>
    public sealed record ShiftedDays(double Days) : FeedNote;

    /// <summary>Kept by a version that kept sentences.</summary>
    public sealed record SaidThen(string Sentence) : FeedNote;
}

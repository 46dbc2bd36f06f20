using WitherAdvisor.Api.Advice.Answers;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Loft.FeedRefresh;
using WitherAdvisor.Loft.Sites;
using WitherAdvisor.Loft.WeatherReviewing;
using WitherAdvisor.Review;
using WitherAdvisor.Spells;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Feeds;
using WitherAdvisor.Words.Units;
using WitherAdvisor.Words.Weather;

namespace WitherAdvisor.Api.Weather.Review;

/// <summary>A review as an answer, in the site's time.</summary>
internal static class ReviewMapping
{
    public static WeatherReviewAnswer ToAnswer(ReviewedSite reviewed)
    {
        SiteClock clock = new(reviewed.Site.TimeZone);
        WallClock wall = new(reviewed.Site.TimeZone);
        WeatherReview review = reviewed.Review;
        return new()
        {
            At = clock.Local(review.Span.Now),
            Age = ToAnswer(review.Age, clock),
            Wanted = [.. review.Wanted.Select(wanted => ToAnswer(wanted, clock, wall))],
            SpellNow = LeafMapping.ToAnswer(review.LeafNow.Spell),
            LeafNow = LeafMapping.ToAnswer(review.LeafNow),
            Thresholds = ToAnswer(review.Thresholds),
            Days = [.. review.Days.Select(day => ReviewDayMapping.ToAnswer(day, review.Thresholds, clock))],
            Hours = [.. review.Hours.Select(hour => ReviewHourMapping.ToAnswer(hour, clock))],
            Holes = [.. review.Holes.Select(hole => ToAnswer(hole, clock))],
            Feed = reviewed.Feed is { } feed ? ToAnswer(feed, clock) : null,
        };
    }

    public static WeatherAgeAnswer ToAnswer(WeatherAge age, SiteClock clock) => new()
    {
        LastReadAt = Local(age.LastRead, clock),
        ReadAgoHours = age.ReadAgoH,
        LastObservedAt = Local(age.LastObserved, clock),
        LastGaugedAt = Local(age.LastGauged, clock),
        LastForetoldAt = Local(age.LastForetold, clock),
        ForecastSavedAt = Local(age.ForecastSavedAt, clock),
        ForecastAgoHours = age.ForecastAgoH,
        IsStale = age.IsStale,
    };

    public static WeatherHoleAnswer ToAnswer(WeatherHole hole, SiteClock clock) => new()
    {
        Quantity = hole.Quantity,
        From = clock.Local(hole.From),
        To = clock.Local(hole.To),
        LengthHours = hole.Hours,
        Instead = hole.Instead,
    };

    /// <summary>Why values are null, those that are.</summary>
    public static IReadOnlyList<UnknownAnswer> Unknown(params IEnumerable<(string Field, ReviewValue Value)> values) =>
    [
        .. values.Where(named => named.Value.Reason is not null)
            .Select(named => new UnknownAnswer { Field = named.Field, Reason = WhyUnknownWording.Reason(Wordbook.English, named.Value.Reason!.Value) }),
    ];

    private static WantedReadingAnswer ToAnswer(WantedReading wanted, SiteClock clock, WallClock wall) => new()
    {
        Kind = wanted.Kind,
        Since = Local(wanted.Since, clock),
        Text = WantedWording.Sentence(Wordbook.English, wanted, wall),
    };

    private static ReviewedFeedAnswer ToAnswer(FeedState feed, SiteClock clock) => new()
    {
        Name = feed.Name,
        Attribution = feed.Attribution,
        LastFetchedAt = Local(feed.Last?.FetchedAt, clock),
        LastRefusal = feed.Last?.Refusal is { } fault ? FeedFaultWording.Sentence(Wordbook.English, fault) : null,
        LastGoodAt = Local(feed.LastGood?.FetchedAt, clock),
        Notes = [.. (feed.LastGood?.Notes ?? []).Select(note => FeedNoteWording.Sentence(Wordbook.English, note))],
    };

    private static SpellThresholdsAnswer ToAnswer(SpellThresholds thresholds) => new()
    {
        WetFromRainInThreeDaysMm = thresholds.WetRainIn72HoursMm,
        WetFromRainOnLeafKgPerKg = thresholds.WetLeafKgPerKg,
        WetEndsBelowRainInThreeDaysMm = thresholds.WetEndsBelowRainIn72HoursMm,
        WetEndsBelowRainOnLeafKgPerKg = thresholds.WetEndsBelowLeafKgPerKg,
        DryBelowWaterStressFraction = thresholds.DryStressBelow,
        DryBelowRainInTenDaysMm = thresholds.DryRainIn10DaysBelowMm,
        DryEndsAboveWaterStressFraction = thresholds.DryEndsAboveStress,
        DryEndsAtRainInTenDaysMm = thresholds.DryEndsAtRainIn10DaysMm,
        DryEndsBelowPowerShareFraction = thresholds.DryEndsBelowPowerShare,
    };

    private static DateTimeOffset? Local(DateTimeOffset? time, SiteClock clock) => time is { } known ? clock.Local(known) : null;
}

using WitherAdvisor.Api.Advice.Responses;
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
    public static WeatherReviewResponse ToResponse(ReviewedSite reviewed)
    {
        SiteClock clock = new(reviewed.Site.TimeZone);
        WallClock wall = new(reviewed.Site.TimeZone);
        WeatherReview review = reviewed.Review;
        return new()
        {
            At = clock.Local(review.Span.Now),
            Age = ToResponse(review.Age, clock),
            Wanted = [.. review.Wanted.Select(wanted => ToResponse(wanted, clock, wall))],
            SpellNow = LeafMapping.ToResponse(review.LeafNow.Spell),
            LeafNow = LeafMapping.ToResponse(review.LeafNow),
            Thresholds = ToResponse(review.Thresholds),
            Days = [.. review.Days.Select(day => ReviewDayMapping.ToResponse(day, review.Thresholds, clock))],
            Hours = [.. review.Hours.Select(hour => ReviewHourMapping.ToResponse(hour, clock))],
            Holes = [.. review.Holes.Select(hole => ToResponse(hole, clock))],
            Feed = reviewed.Feed is { } feed ? ToResponse(feed, clock) : null,
        };
    }

    public static WeatherAgeResponse ToResponse(WeatherAge age, SiteClock clock) => new()
    {
        LastKnownAt = Local(age.LastKnown, clock),
        ReadAgoHours = age.KnownAgoH,
        LastObservedAt = Local(age.LastObserved, clock),
        LastGaugedAt = Local(age.LastGauged, clock),
        LastForecastAt = Local(age.LastForecast, clock),
        ForecastSavedAt = Local(age.ForecastSavedAt, clock),
        ForecastAgoHours = age.ForecastAgoH,
        IsStale = age.IsStale,
    };

    public static WeatherHoleResponse ToResponse(WeatherHole hole, SiteClock clock) => new()
    {
        Quantity = hole.Quantity,
        From = clock.Local(hole.From),
        To = clock.Local(hole.To),
        LengthHours = hole.Hours,
        Instead = hole.Instead,
    };

    /// <summary>Why values are null, those that are.</summary>
    public static IReadOnlyList<UnknownResponse> Unknown(params IEnumerable<(string Field, ReviewValue Value)> values) =>
    [
        .. values.Where(named => named.Value.Reason is not null)
            .Select(named => new UnknownResponse { Field = named.Field, Reason = WhyUnknownWording.Reason(Wordbook.English, named.Value.Reason!.Value) }),
    ];

    private static WantedReadingResponse ToResponse(WantedReading wanted, SiteClock clock, WallClock wall) => new()
    {
        Kind = wanted.Kind,
        Since = Local(wanted.Since, clock),
        Text = WantedWording.Sentence(Wordbook.English, wanted, wall),
    };

    private static ReviewedFeedResponse ToResponse(FeedState feed, SiteClock clock) => new()
    {
        Name = feed.Name,
        Attribution = feed.Attribution,
        LastFetchedAt = Local(feed.Last?.FetchedAt, clock),
        LastRefusal = feed.Last?.Refusal is { } fault ? FeedFaultWording.Sentence(Wordbook.English, fault) : null,
        LastGoodAt = Local(feed.LastGood?.FetchedAt, clock),
        Notes = [.. (feed.LastGood?.Notes ?? []).Select(note => FeedNoteWording.Sentence(Wordbook.English, note))],
    };

    private static SpellThresholdsResponse ToResponse(SpellThresholds thresholds) => new()
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

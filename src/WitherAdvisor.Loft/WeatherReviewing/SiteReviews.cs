using NodaTime;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Loft.FeedRefresh;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Review;

namespace WitherAdvisor.Loft.WeatherReviewing;

/// <summary>Reviews the kept weather of a site.</summary>
public sealed class SiteReviews(IWeatherStore weather, FeedStateReading feeds)
{
    /// <summary>Soil water remembers months.</summary>
    private const int DaysBefore = 76;

    /// <summary>The day that the coming night ends in, and what a forecast tells of it.</summary>
    private static readonly TimeSpan Ahead = TimeSpan.FromHours(48);

    public async Task<ReviewedSite> Of(StoredSite site, DateTimeOffset now, int days, CancellationToken cancel)
    {
        DateTimeOffset from = now.AddDays(-DaysBefore - days);
        IReadOnlyList<RainTotal> totals = await weather.ReadRainTotals(site.Id, from, now, cancel);
        IReadOnlyList<SourcedReading> rows = await weather.ReadSourced(site.Id, from, now + Ahead, cancel);
        ComposedWeather composed = WeatherComposition.Of([.. rows.Where(row => WasKnown(row, now))], totals);
        ReviewSpan span = new(now, Midnight(site, now), days);
        WeatherReview review = WeatherReview.Of(site.Site, composed, span, new WitherCoefficients());
        return new(site, review, await Feed(site, cancel));
    }

    /// <summary>Of a moment gone by, what was read after it is not for the review to know.</summary>
    private static bool WasKnown(SourcedReading row, DateTimeOffset now) =>
        row.Reading.Time <= now || row.Source is WeatherSource.CallerForecast or WeatherSource.FeedForecast;

    private static DateTimeOffset Midnight(StoredSite site, DateTimeOffset now)
    {
        DateTimeZone zone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(site.TimeZone) ?? DateTimeZone.Utc;
        return zone.AtStartOfDay(Instant.FromDateTimeOffset(now).InZone(zone).Date).ToDateTimeOffset();
    }

    private async Task<FeedState?> Feed(StoredSite site, CancellationToken cancel) =>
        site.Feed is { } name ? await feeds.Of(site.Id, name, cancel) : null;
}

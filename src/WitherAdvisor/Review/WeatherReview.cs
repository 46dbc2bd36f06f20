using WitherAdvisor.Coefficients;
using WitherAdvisor.Evaporation;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Screening;
using WitherAdvisor.Sites;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Review;

/// <summary>The weather of the last days and the coming night as the model sees it.</summary>
/// <param name="Span">Which stretch.</param>
/// <param name="Hours">By time.</param>
/// <param name="Days">By time; the last ones end ahead.</param>
/// <param name="Holes">By quantity and time.</param>
/// <param name="Age">How old it is.</param>
/// <param name="Wanted">Readings that would help most, at most two.</param>
/// <param name="LeafNow">What an advice would say of leaf plucked and loaded at this moment.</param>
/// <param name="Thresholds">Where spells begin and end.</param>
public sealed record WeatherReview(
    ReviewSpan Span,
    IReadOnlyList<ReviewHour> Hours,
    IReadOnlyList<ReviewDay> Days,
    IReadOnlyList<WeatherHole> Holes,
    WeatherAge Age,
    IReadOnlyList<WantedReading> Wanted,
    LeafEstimate LeafNow,
    SpellThresholds Thresholds)
{
    /// <summary>Reviews weather made one of a site.</summary>
    /// <param name="weather">As many days of it as are known, 60 or more before the span for the soil.</param>
    public static WeatherReview Of(
        Site site,
        ComposedWeather weather,
        ReviewSpan span,
        WitherCoefficients coefficients,
        SpellThresholds? thresholds = null)
    {
        SpellThresholds held = thresholds ?? new SpellThresholds();
        var screened = ScreenedWeather.Of(site, weather.Weather);
        IReadOnlyList<WeatherReading> forecast = GapFilling.Of(screened.Readings, weather.RainTotals, weather.Forecast);
        LeafHistory history = LeafHistory.UpTo(site, [.. forecast, .. screened.Readings], weather.RainTotals, span.LastDayEnd, span.DaysInAll);
        KnownHours told = KnownHours.On(history.Series.Grid, screened.Readings, forecast, weather.RainTotals, site);
        int first = (int)Math.Ceiling(told.Grid.PositionOf(span.From));
        int last = Math.Min((int)told.Grid.PositionOf(span.To), told.Grid.Hours);
        return new(
            span,
            [.. ReviewedHours.Of(history, told, first, last, span.Now, coefficients)],
            [.. ReviewedDays.Of(history, told, span, coefficients, held)],
            WeatherHoles.In(told, first + 1, last, span.Now),
            WeatherAge.Of(weather, span.Now),
            WantedReadings.Of(told, (int)told.Grid.PositionOf(span.Now)),
            LeafWithGapsFilled.Estimate(
                site,
                ScreenedWeather.Of(site, [.. weather.Weather.Where(reading => reading.Time <= span.Now)]),
                [.. forecast.Where(reading => reading.Time <= span.Now)],
                weather.RainTotals,
                new(span.Now, span.Now, span.Now),
                coefficients,
                held),
            held);
    }
}

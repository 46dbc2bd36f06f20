using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Review;
using WitherAdvisor.Spells;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Review;

public sealed class WeatherReviewTests
{
    private const double Rounding = 1e-12;
    private static readonly DateTimeOffset Now = InventedDays.At(12);

    [Fact]
    public void Leaf_now_is_what_an_estimate_of_leaf_plucked_now_says()
    {
        IReadOnlyList<WeatherReading> readings = [.. InventedDays.Wet.Between(-24 * 40, 12, EveryThirdHour)];
        WeatherReview review = Review(Composed(readings));

        LeafEstimate estimate = LeafFromWeather.Estimate(InventedDays.Site, readings, [], new(Now, Now, Now), new());

        Assert.Equal(estimate.Spell, review.LeafNow.Spell);
        Assert.Equal(estimate.SurfaceWaterKgPerKg.Value, review.LeafNow.SurfaceWaterKgPerKg.Value);
        Assert.Equal(estimate.SurfaceWaterKgPerKg.Value, At(review, Now).SurfaceWaterKgPerKg.Value!.Value, 1e-6);
    }

    [Fact]
    public void Each_day_is_what_an_estimate_of_leaf_plucked_at_its_end_says()
    {
        IReadOnlyList<WeatherReading> readings = InventedDays.DryWindy.Hours(40, hour => hour == -30 ? 30 : 0);
        WeatherReview review = Review(Composed(readings), InventedDays.At(24));

        foreach (ReviewDay day in review.Days.Where(day => !day.EndsAhead))
        {
            LeafEstimate estimate = LeafFromWeather.Estimate(
                InventedDays.Site, [.. readings.Where(reading => reading.Time <= day.To)], [], new(day.To, day.To, day.To), new());

            Assert.Equal(estimate.Spell.Kind, day.Spell.Kind);
            Assert.Equal(estimate.Spell.RainLast10DaysMm!.Value, day.Spell.Spell.RainLast10DaysMm!.Value, Rounding);
            Assert.Equal(estimate.Spell.WaterStress!.Value, day.WaterStress.Value!.Value, 0.02);
        }

        Assert.Contains(review.Days, day => day.Spell.Reason == SpellReason.RainIn72Hours);
        Assert.Contains(review.Days, day => day.Spell.Kind == SpellKind.DryWindy);
    }

    [Fact]
    public void Days_run_from_the_sites_midnight_to_the_next_and_hours_to_the_end_of_the_night()
    {
        WeatherReview review = Review(Composed(InventedDays.Ordinary.DryHours(30)));

        Assert.Equal(16, review.Days.Count);
        Assert.All(review.Days, day => Assert.Equal(InventedDays.LastMidnight.UtcDateTime.Hour, day.To.UtcDateTime.Hour));
        Assert.Equal(InventedDays.At(-14 * 24), review.Days[0].From);
        Assert.Equal(review.Days[0].From, review.Hours[0].Time);
        Assert.Equal(Now.AddHours(18), review.Hours[^1].Time);
        Assert.Equal([false, false, true], review.Hours.Where(hour => (hour.Time - Now).Duration() <= TimeSpan.FromHours(1)).Select(hour => hour.IsAhead));
    }

    [Fact]
    public void What_is_read_drawn_forecast_and_unknown_is_told_apart()
    {
        // Hourly to 6 h, none at 4 and 5 h (drawn across), a forecast from 9 h to 20 h, then nothing.
        List<SourcedReading> rows = [.. Rows(InventedDays.Ordinary.Between(-480, 6, _ => 0).Where(reading => reading.Time != InventedDays.At(4) && reading.Time != InventedDays.At(5)))];
        rows.AddRange(Rows(InventedDays.Ordinary.Between(9, 20, _ => 1), WeatherSource.FeedForecast));

        WeatherReview review = Review(WeatherComposition.Of(rows, []));

        Assert.Equal(ValueStanding.Observed, At(review, InventedDays.At(3)).DryBulbC.Standing);
        Assert.Equal(ValueStanding.Filled, At(review, InventedDays.At(4)).DewPointC.Standing);
        Assert.Equal(ValueStanding.Unknown, At(review, InventedDays.At(4)).RainMm.Standing);
        Assert.Equal(ValueStanding.Forecast, At(review, InventedDays.At(10)).RainMm.Standing);
        Assert.Equal(ValueStanding.Forecast, At(review, InventedDays.At(10)).SurfaceWaterKgPerKg.Standing);
        ReviewHour unknown = At(review, InventedDays.At(23));
        Assert.Null(unknown.DryBulbC.Value);
        Assert.Null(unknown.RainMm.Value);
        Assert.Equal(WhyUnknown.NeitherObservedNorForecast, unknown.RainMm.Reason);
    }

    [Fact]
    public void Holes_are_told_by_quantity_with_what_stands_in_for_them()
    {
        List<SourcedReading> rows = [.. Rows(InventedDays.Ordinary.Between(-480, 6, hour => hour is > -30 and <= -20 ? null : 0))];
        rows.AddRange(Rows(InventedDays.Ordinary.Between(7, 40, _ => 0), WeatherSource.CallerForecast));

        IReadOnlyList<WeatherHole> rain = [.. Review(WeatherComposition.Of(rows, [])).Holes.Where(hole => hole.Quantity == WeatherQuantity.Rain)];

        Assert.Equal(
            [
                new(WeatherQuantity.Rain, InventedDays.At(-30).ToUniversalTime(), InventedDays.At(-20).ToUniversalTime(), ValueStanding.Unknown),
                new(WeatherQuantity.Rain, InventedDays.At(6).ToUniversalTime(), InventedDays.At(12).ToUniversalTime(), ValueStanding.Forecast),
            ],
            rain);
    }

    [Fact]
    public void Rain_from_a_gauge_is_spread_and_is_no_hole()
    {
        RainTotal gauge = new(InventedDays.At(-24), Now, 12);
        List<SourcedReading> rows = [.. Rows(InventedDays.Ordinary.Between(-480, 12, hour => hour > -24 ? null : 0))];

        WeatherReview review = Review(WeatherComposition.Of(rows, [gauge]));

        Assert.DoesNotContain(review.Holes, hole => hole.Quantity == WeatherQuantity.Rain && hole.From < Now);
        Assert.Equal(ValueStanding.Filled, At(review, Now).RainMm.Standing);
        Assert.Equal(12.0 / 36, At(review, Now).RainMm.Value!.Value, Rounding);
        Assert.Equal(Now, review.Age.LastGauged);
    }

    [Fact]
    public void Age_is_that_of_the_newest_reading_by_hand_or_feed_and_never_of_a_forecast()
    {
        List<SourcedReading> rows = [.. Rows(InventedDays.Ordinary.Between(-480, 4, _ => 0))];
        rows.AddRange(Rows(InventedDays.Ordinary.Between(5, 9, _ => 0), WeatherSource.FeedAnalysis));
        rows.AddRange(Rows(InventedDays.Ordinary.Between(10, 40, _ => 0), WeatherSource.FeedForecast));

        WeatherAge age = Review(WeatherComposition.Of(rows, [])).Age;

        Assert.Equal(3, age.KnownAgoH!.Value, Rounding);
        Assert.Equal(InventedDays.At(4), age.LastObserved);
        Assert.Equal(InventedDays.At(40), age.LastForecast);
        Assert.False(age.IsStale);
    }

    [Fact]
    public void After_hours_without_a_reading_the_two_bulbs_and_the_rain_since_then_are_asked_for()
    {
        WeatherReview review = Review(Composed(InventedDays.Ordinary.Between(-480, 2, _ => 0)));

        Assert.True(review.Age.IsStale);
        Assert.Equal([new WantedReading(WantedKind.Bulbs), new WantedReading(WantedKind.Rain, InventedDays.At(2).ToUniversalTime())], review.Wanted);
    }

    [Fact]
    public void Weather_that_is_all_read_asks_for_nothing() =>
        Assert.Empty(Review(Composed(InventedDays.Ordinary.Between(-480, 12, _ => 0))).Wanted);

    [Fact]
    public void Nothing_known_is_told_as_unknown_with_reasons_and_never_as_0_or_as_ordinary_weather()
    {
        WeatherReview review = Review(WeatherComposition.Of([], []));

        Assert.All(review.Hours, hour => Assert.All(
            [hour.DryBulbC, hour.DewPointC, hour.WetBulbC, hour.HygrometricDifferenceK, hour.RainMm, hour.WindMPerS, hour.SurfaceWaterKgPerKg],
            value => Assert.True(value.Value is null && value.Standing == ValueStanding.Unknown && value.Reason is not null)));
        Assert.All(review.Days, day =>
        {
            Assert.Null(day.Spell.Kind);
            Assert.All([day.RainMm, day.ReferenceMm, day.DepletionMm, day.WaterStress, day.DryingPowerKPaMPerS], value => Assert.Null(value.Value));
        });
        Assert.Null(review.Age.KnownAgoH);
        Assert.True(review.Age.IsStale);
        Assert.Equal(4, review.Holes.Count);
    }

    private static double? EveryThirdHour(int hour) => hour % 3 == 0 ? 0.6 : 0;

    private static ReviewHour At(WeatherReview review, DateTimeOffset time) => Assert.Single(review.Hours, hour => hour.Time == time);

    private static WeatherReview Review(ComposedWeather weather, DateTimeOffset? now = null) =>
        WeatherReview.Of(InventedDays.Site, weather, new(now ?? Now, InventedDays.LastMidnight), new());

    private static ComposedWeather Composed(IEnumerable<WeatherReading> readings) => WeatherComposition.Of([.. Rows(readings)], []);

    private static IEnumerable<SourcedReading> Rows(IEnumerable<WeatherReading> readings, WeatherSource source = WeatherSource.Observed) =>
        readings.Select(reading => new SourcedReading(reading, source, source >= WeatherSource.FeedAnalysis && source != WeatherSource.CallerForecast ? "hill" : null, Now));
}

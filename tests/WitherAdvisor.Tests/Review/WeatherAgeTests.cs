using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Review;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Review;

public sealed class WeatherAgeTests
{
    private static readonly DateTimeOffset Now = InventedDays.At(12);

    [Fact]
    public void The_newest_of_each_kind_counts()
    {
        RainTotal[] totals = [new(InventedDays.At(-30), InventedDays.At(-20), 3), new(InventedDays.At(-20), InventedDays.At(-2), 3), new(InventedDays.At(0), InventedDays.At(20), 3)];
        ComposedWeather weather = WeatherComposition.Of(
        [
            Row(4, WeatherSource.Observed, -1) with { Reading = new(InventedDays.At(4), RainMm: 1) },
            Row(8, WeatherSource.FeedAnalysis, -1),
            Row(14, WeatherSource.FeedForecast, 3),
            Row(20, WeatherSource.FeedForecast, 9),
        ], totals);

        WeatherAge age = WeatherAge.Of(weather, Now);

        Assert.Equal(
            (InventedDays.At(8), InventedDays.At(4), InventedDays.At(-2), InventedDays.At(20), InventedDays.At(9)),
            (age.LastKnown!.Value, age.LastObserved!.Value, age.LastGauged!.Value, age.LastForecast!.Value, age.ForecastSavedAt!.Value));
    }

    [Fact]
    public void Wind_that_was_not_read_for_a_day_is_asked_for_where_nothing_else_is_missing()
    {
        ComposedWeather weather = WeatherComposition.Of(
            [.. InventedDays.Ordinary.Between(-480, 12, _ => 0).Select(reading => new SourcedReading(reading with { WindMPerS = null }, WeatherSource.Observed, null, Now))], []);

        WeatherReview review = WeatherReview.Of(InventedDays.Site, weather, new(Now, InventedDays.LastMidnight), new());

        Assert.Equal([new WantedReading(WantedKind.Wind)], review.Wanted);
    }

    private static SourcedReading Row(double hour, WeatherSource source, double savedAt) =>
        new(new(InventedDays.At(hour), DryBulbC: 20), source, source == WeatherSource.Observed ? null : "hill", InventedDays.At(savedAt));
}

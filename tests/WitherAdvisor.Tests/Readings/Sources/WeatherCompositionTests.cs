using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Readings.Sources;

public sealed class WeatherCompositionTests
{
    private static readonly DateTimeOffset Hour = InventedDays.At(6);

    [Fact]
    public void Each_value_is_from_the_best_source_that_knows_it()
    {
        SourcedReading[] rows =
        [
            From(WeatherSource.FeedForecast, new(Hour, 14, 14, RainMm: 4, WindMPerS: 4, StationPressurePa: 84_004, ShortwaveWPerM2: 4)),
            From(WeatherSource.CallerForecast, new(Hour, 13, 13, RainMm: 3, WindMPerS: 3, StationPressurePa: 84_003)),
            From(WeatherSource.FeedAnalysis, new(Hour, 12, 12, RainMm: 2, WindMPerS: 2)),
            From(WeatherSource.Observed, new(Hour, 11, 11)),
        ];

        ComposedReading composed = Assert.Single(Compose(rows).Readings);

        Assert.Equal(new(Hour, 11, 11, RainMm: 2, WindMPerS: 2, StationPressurePa: 84_003, ShortwaveWPerM2: 4), composed.Best);
        Assert.Equal(
            new(Origin(rows[3]), Origin(rows[3]), Origin(rows[2]), Origin(rows[2]), Origin(rows[1]), Origin(rows[0])),
            composed.Origins);
    }

    [Fact]
    public void An_instant_partly_read_stands_in_both_lists_and_nothing_forecast_passes_as_read()
    {
        ComposedWeather weather = Compose(
            From(WeatherSource.Observed, new(Hour, RainMm: 0)),
            From(WeatherSource.FeedForecast, new(Hour, 19, 15, RainMm: 5, WindMPerS: 3)));

        Assert.Equal([new(Hour, RainMm: 0)], weather.Weather);
        Assert.Equal([new(Hour, 19, 15, WindMPerS: 3)], weather.Forecast);
    }

    [Theory]
    [InlineData(WeatherSource.Observed, true)]
    [InlineData(WeatherSource.FeedAnalysis, true)]
    [InlineData(WeatherSource.CallerForecast, false)]
    [InlineData(WeatherSource.FeedForecast, false)]
    public void An_analysis_counts_as_read_and_a_forecast_never_does(WeatherSource source, bool read)
    {
        WeatherReading reading = new(Hour, 19, 15);

        ComposedWeather weather = Compose(From(source, reading));

        Assert.Equal(read ? [reading] : [], weather.Weather);
        Assert.Equal(read ? [] : [reading], weather.Forecast);
    }

    [Fact]
    public void Within_one_source_what_was_saved_last_counts_value_by_value()
    {
        ComposedWeather weather = Compose(
            From(WeatherSource.FeedForecast, new(Hour, 20, RainMm: 2), savedAfterH: 2),
            From(WeatherSource.FeedForecast, new(Hour, 18, RainMm: 1, WindMPerS: 3), savedAfterH: 1));

        Assert.Equal([new(Hour, 20, RainMm: 2, WindMPerS: 3)], weather.Forecast);
        Assert.Equal(InventedDays.At(2), weather.Readings[0].Origins.Rain!.SavedAt);
        Assert.Equal(InventedDays.At(1), weather.Readings[0].Origins.Wind!.SavedAt);
    }

    [Fact]
    public void Of_two_saved_at_once_the_later_in_the_list_counts()
    {
        ComposedWeather weather = Compose(
            From(WeatherSource.Observed, new(Hour, RainMm: 1)), From(WeatherSource.Observed, new(Hour, RainMm: 2)));

        Assert.Equal(2, Assert.Single(weather.Weather).RainMm);
    }

    [Fact]
    public void An_old_observation_still_wins_over_a_new_analysis()
    {
        ComposedWeather weather = Compose(
            From(WeatherSource.FeedAnalysis, new(Hour, RainMm: 0), savedAfterH: 9),
            From(WeatherSource.Observed, new(Hour, RainMm: 7), savedAfterH: 1));

        Assert.Equal(7, Assert.Single(weather.Weather).RainMm);
    }

    [Fact]
    public void The_three_humidities_are_one_value_so_a_feeds_dew_point_cannot_overrule_a_wet_bulb_read()
    {
        ComposedWeather weather = Compose(
            From(WeatherSource.Observed, new(Hour, 20, WetBulbC: 17)),
            From(WeatherSource.FeedAnalysis, new(Hour, 21, DewPointC: 12, RelativeHumidity: 0.56)));

        Assert.Equal([new(Hour, 20, WetBulbC: 17)], weather.Weather);
    }

    [Fact]
    public void A_relative_humidity_is_not_put_beside_the_dry_bulb_of_another_source()
    {
        ComposedWeather weather = Compose(
            From(WeatherSource.Observed, new(Hour, 18)),
            From(WeatherSource.FeedAnalysis, new(Hour, 20, RelativeHumidity: 0.8)),
            From(WeatherSource.CallerForecast, new(Hour, 21, DewPointC: 14, RelativeHumidity: 0.64)));

        Assert.Equal([new(Hour, 18)], weather.Weather);
        Assert.Equal([new(Hour, DewPointC: 14)], weather.Forecast);
    }

    [Fact]
    public void A_dew_point_above_the_dry_bulb_of_another_source_means_saturated_air()
    {
        ComposedWeather weather = Compose(
            From(WeatherSource.Observed, new(Hour, 15)), From(WeatherSource.FeedAnalysis, new(Hour, 18, DewPointC: 17)));

        Assert.Equal([new(Hour, 15, DewPointC: 15)], weather.Weather);
    }

    [Fact]
    public void Where_only_relative_humidity_is_known_it_is_kept()
    {
        Assert.Equal([new(Hour, RelativeHumidity: 0.8)], Compose(From(WeatherSource.Observed, new(Hour, RelativeHumidity: 0.8))).Weather);
    }

    [Theory]
    [InlineData(-2, true)]
    [InlineData(-1, true)] // the gauge was emptied as the hour began
    [InlineData(-0.5, true)]
    [InlineData(0, false)] // and here as it ended
    public void A_gauge_read_by_hand_wins_over_what_a_feed_says_of_its_hours(double emptiedAtH, bool gauged)
    {
        RainTotal total = new(Hour.AddHours(emptiedAtH), Hour.AddHours(5), 12);
        SourcedReading[] rows =
        [
            From(WeatherSource.FeedAnalysis, new(Hour, 19, RainMm: 0)),
            From(WeatherSource.FeedForecast, new(Hour, 19, RainMm: 1)),
        ];

        ComposedReading composed = Assert.Single(WeatherComposition.Of(rows, [total]).Readings);

        Assert.Equal(gauged ? null : 0.0, composed.Best.RainMm);
        Assert.Equal(gauged, composed.Origins.Rain is null);
        Assert.Equal(19, composed.Best.DryBulbC);
    }

    [Fact]
    public void Rain_read_by_the_hour_stands_beside_a_gauge()
    {
        ComposedWeather weather = WeatherComposition.Of(
            [From(WeatherSource.Observed, new(Hour, RainMm: 3))], [new(Hour.AddHours(-5), Hour, 12)]);

        Assert.Equal(3, Assert.Single(weather.Weather).RainMm);
    }

    [Fact]
    public void A_total_that_no_gauge_can_have_shown_silences_no_feed()
    {
        ComposedWeather weather = WeatherComposition.Of(
            [From(WeatherSource.FeedAnalysis, new(Hour, RainMm: 3))], [new(Hour.AddHours(-5), Hour, -1), new(Hour, Hour.AddHours(-5), 4)]);

        Assert.Equal(3, Assert.Single(weather.Weather).RainMm);
    }

    [Fact]
    public void Instants_come_in_order_of_time_whatever_their_offset_and_those_that_tell_nothing_are_absent()
    {
        ComposedWeather weather = Compose(
            From(WeatherSource.Observed, new(Hour.AddHours(1), 20)),
            From(WeatherSource.FeedAnalysis, new(Hour.ToOffset(TimeSpan.Zero), RainMm: 1)),
            From(WeatherSource.Observed, new(Hour, 19)),
            From(WeatherSource.Observed, new(Hour.AddHours(2))));

        Assert.Equal([19.0, 20.0], weather.Weather.Select(reading => reading.DryBulbC));
        Assert.Equal(1, weather.Weather[0].RainMm);
    }

    [Fact]
    public void What_others_say_of_the_time_of_the_last_observed_air_is_kept_for_comparison()
    {
        ComposedWeather weather = Compose(
            From(WeatherSource.FeedAnalysis, new(Hour.AddHours(-2), 16, DewPointC: 12)),
            From(WeatherSource.FeedAnalysis, new(Hour.AddHours(-1), 17, DewPointC: 13, RainMm: 2)),
            From(WeatherSource.Observed, new(Hour.AddMinutes(-40), 19, WetBulbC: 18)),
            From(WeatherSource.Observed, new(Hour.AddMinutes(-20), RainMm: 0)),
            From(WeatherSource.FeedForecast, new(Hour, 18, DewPointC: 14)),
            From(WeatherSource.FeedForecast, new(Hour.AddHours(1), 18, DewPointC: 15)));

        Assert.Equal([new(Hour.AddHours(-1), 17, DewPointC: 13), new(Hour, 18, DewPointC: 14)], weather.BesideLastObserved);
        Assert.Equal(
            [new(Hour.AddHours(-1), 17, DewPointC: 13), new(Hour, 18, DewPointC: 14), new(Hour.AddHours(1), 18, DewPointC: 15)],
            weather.ForecastToCompare);
    }

    [Fact]
    public void A_forecast_for_the_hour_that_was_read_is_compared_with_it()
    {
        ComposedWeather weather = Compose(
            From(WeatherSource.FeedForecast, new(Hour, 18, RelativeHumidity: 0.9)),
            From(WeatherSource.Observed, new(Hour, 21, RelativeHumidity: 0.8)));

        Assert.Empty(weather.Forecast);
        Assert.Equal([new(Hour, 18, RelativeHumidity: 0.9)], weather.ForecastToCompare);
    }

    [Fact]
    public void Where_the_site_was_never_read_there_is_nothing_to_compare()
    {
        ComposedWeather weather = Compose(
            From(WeatherSource.FeedAnalysis, new(Hour, 18, DewPointC: 14)), From(WeatherSource.Observed, new(Hour, DryBulbC: 18)));

        Assert.Empty(weather.BesideLastObserved);
    }

    [Fact]
    public void Nothing_composes_to_nothing() => Assert.Empty(Compose().Readings);

    private static ComposedWeather Compose(params SourcedReading[] rows) => WeatherComposition.Of(rows, []);

    private static SourcedReading From(WeatherSource source, WeatherReading reading, double savedAfterH = 0) => new(
        reading, source, source is WeatherSource.FeedAnalysis or WeatherSource.FeedForecast ? "valley-feed" : null,
        InventedDays.At(savedAfterH));

    private static ValueOrigin Origin(SourcedReading row) => new(row.Source, row.Feed, row.SavedAt);
}

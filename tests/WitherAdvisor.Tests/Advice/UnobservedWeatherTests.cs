using WitherAdvisor.Advice;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Sites;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

/// <summary>Hours before loading that nobody read: what was forecast stands in, and the advice says so.</summary>
public sealed class UnobservedWeatherTests
{
    private static readonly DateTimeOffset LoadedAt = InventedDays.At(13);

    private static readonly IReadOnlyList<WeatherReading> Dry = (InventedDays.Ordinary with { Light = 0.7 }).DryHours(70);

    private static readonly IReadOnlyList<WeatherReading> Read = [.. Dry.Where(reading => reading.Time <= LoadedAt)];

    private static readonly IReadOnlyList<WeatherReading> Ahead = [.. Hours(14, 44)];

    [Fact]
    public void Weather_read_up_to_loading_leaves_nothing_to_say()
    {
        Assert.Empty(Advise(Read, Ahead).Assumptions);
    }

    [Theory]
    [InlineData(3, false)]
    [InlineData(3.5, true)]
    [InlineData(9, true)]
    public void Weather_is_stale_when_nothing_was_read_in_more_than_three_hours(double ageH, bool stale)
    {
        DateTimeOffset newest = LoadedAt.AddHours(-ageH);
        IReadOnlyList<WeatherReading> read = [.. Read.Where(reading => reading.Time < newest), Dry[0] with { Time = newest }];

        Assert.Equal<Assumption>(
            stale ? [new Assumption.WeatherStale(ageH, 0)] : [],
            Advise(read, Ahead).Assumptions.OfType<Assumption.WeatherStale>());
    }

    [Fact]
    public void What_was_forecast_stands_in_for_hours_that_nobody_read_and_the_advice_says_so()
    {
        AdviceOutcome advice = Advise(ReadUntil(4), [.. Rainy(5, 13), .. Ahead]);

        Assert.Equal([new Assumption.WeatherStale(9, 9)], advice.Assumptions);
        Assert.True(advice.Leaf!.SurfaceWaterKgPerKg.Value > Advise(Read, Ahead).Leaf!.SurfaceWaterKgPerKg.Value + 0.05);
    }

    [Fact]
    public void A_hole_is_never_dry_weather()
    {
        Estimate dry = Advise(Read, Ahead).Leaf!.SurfaceWaterKgPerKg;
        Estimate hole = Advise(ReadUntil(4), Ahead).Leaf!.SurfaceWaterKgPerKg;

        Assert.True(hole.Value > dry.Value);
        Assert.True(hole.StandardDeviation > dry.StandardDeviation);
    }

    [Fact]
    public void A_night_forecast_dry_is_not_as_sure_as_one_that_was_read_dry()
    {
        Estimate read = Advise(Read, Ahead).Leaf!.SurfaceWaterKgPerKg;
        Estimate forecast = Advise(ReadUntil(4), [.. Hours(5, 13), .. Ahead]).Leaf!.SurfaceWaterKgPerKg;

        Assert.Equal(read.Value, forecast.Value, 1e-12);
        Assert.True(forecast.StandardDeviation > read.StandardDeviation);
    }

    [Fact]
    public void What_was_read_wins_over_what_was_forecast_for_the_same_hours()
    {
        AssertSame(Advise(Read, Ahead), Advise(Read, [.. Rainy(-100, 9), .. Ahead]));
    }

    [Fact]
    public void A_reading_some_minutes_off_the_hour_wins_too()
    {
        IReadOnlyList<WeatherReading> airways = [.. Read.Select(reading => reading with { Time = reading.Time.AddMinutes(-7) })];

        AssertSame(Advise(airways, Ahead), Advise(airways, [.. Rainy(-100, 9), .. Ahead]));
    }

    [Fact]
    public void A_gauge_read_by_hand_wins_over_the_forecast_rain_of_its_hours()
    {
        IReadOnlyList<WeatherReading> noRain = [.. Read.Select(reading => reading with { RainMm = null })];
        RainTotal[] gauge = [new(InventedDays.At(-24 * 69), LoadedAt, 300)];

        AssertSame(Advise(noRain, Ahead, gauge), Advise(noRain, [.. Hours(-48, 13), .. Ahead], gauge));
    }

    [Fact]
    public void A_single_value_that_nobody_read_is_taken_from_what_was_forecast_and_named()
    {
        IReadOnlyList<WeatherReading> noWind = [.. Read.Select(reading => reading with { WindMPerS = null })];

        AdviceOutcome advice = Advise(noWind, [.. Hours(-71, 13), .. Ahead]);

        Assert.Equal(new Assumption.ForecastUsed(0, 0, 0, 85, 0), Said<Assumption.ForecastUsed>(advice));
        Assert.DoesNotContain(advice.Assumptions, assumption => assumption.Code == "no_wind");
    }

    [Fact]
    public void A_forecast_relative_humidity_is_not_put_beside_a_dry_bulb_that_was_read()
    {
        IReadOnlyList<WeatherReading> noHumidity = [.. Read.Select(reading => reading with { DewPointC = null })];
        IEnumerable<WeatherReading> forecast = Hours(-71, 13).Select(reading => reading with { DewPointC = null, RelativeHumidity = 0.5 });

        Assert.Equal(72, Said<Assumption.AirUnknown>(Advise(noHumidity, [.. forecast, .. Ahead])).UnknownHours);
    }

    [Fact]
    public void A_value_that_no_weather_can_have_is_no_reading()
    {
        IReadOnlyList<WeatherReading> read = [.. ReadUntil(4), new(LoadedAt, DryBulbC: -9999, RainMm: -9999)];

        Assert.Equal(9, Said<Assumption.WeatherStale>(Advise(read, [.. Hours(5, 13), .. Ahead])).AgeHours);
    }

    [Fact]
    public void Wind_alone_is_no_news_of_the_weather()
    {
        IReadOnlyList<WeatherReading> read = [.. ReadUntil(4), new(LoadedAt, WindMPerS: 2)];

        Assert.Equal(9, Said<Assumption.WeatherStale>(Advise(read, Ahead)).AgeHours);
    }

    [Fact]
    public void Where_nothing_was_read_at_all_the_advice_rests_on_what_was_forecast_and_says_so()
    {
        AdviceOutcome advice = Advise([], [.. Hours(-24, 13), .. Ahead]);

        Assert.Equal(new Assumption.WeatherStale(null, 38), Said<Assumption.WeatherStale>(advice));
    }

    [Fact]
    public void The_same_weather_gives_the_same_advice_whichever_way_it_came_in()
    {
        IReadOnlyList<WeatherReading> forecast = [.. Rainy(5, 13), .. Ahead];
        AdviceOutcome given = Advise(ReadUntil(4), forecast);

        AssertSame(given, Through(WeatherSource.FeedAnalysis, WeatherSource.FeedForecast, "valley-feed"));
        AssertSame(given, Through(WeatherSource.Observed, WeatherSource.CallerForecast, null));

        AdviceOutcome Through(WeatherSource read, WeatherSource ahead, string? feed)
        {
            ComposedWeather weather = WeatherComposition.Of(
                [
                    .. forecast.Select(reading => new SourcedReading(reading, ahead, feed, LoadedAt)),
                    .. ReadUntil(4).Select(reading => new SourcedReading(reading, read, feed, LoadedAt)),
                ],
                []);
            return Advise(weather.Weather, weather.Forecast);
        }
    }

    private static IReadOnlyList<WeatherReading> ReadUntil(double hour) => [.. Read.Where(reading => reading.Time <= InventedDays.At(hour))];

    private static IEnumerable<WeatherReading> Hours(int from, int to) =>
        (InventedDays.Ordinary with { Light = 0.7 }).Between(from, to, _ => 0);

    private static IEnumerable<WeatherReading> Rainy(int from, int to) => InventedDays.Wet.Between(from, to, _ => 2);

    private static AdviceOutcome Advise(
        IReadOnlyList<WeatherReading> read, IReadOnlyList<WeatherReading> forecast, IReadOnlyList<RainTotal>? gauge = null) =>
        Advisor.Advise(new(
            InventedDays.Site, new Trough(40),
            new Batch(
                new LeafLabel("Invented", "7", null, null, null), InventedDays.At(8), InventedDays.At(12), LoadedAt, 1100),
            read, gauge ?? [], forecast, new WitherCoefficients()));

    private static T Said<T>(AdviceOutcome advice)
        where T : Assumption => Assert.Single(advice.Assumptions.OfType<T>());

    private static void AssertSame(AdviceOutcome wanted, AdviceOutcome found) => Assert.Equivalent(wanted, found, strict: true);
}

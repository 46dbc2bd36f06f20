using WitherAdvisor.Advice;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Sites;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Advice;

/// <summary>Hours before loading that nobody read: what was foretold stands in, and the advice says so.</summary>
public sealed class UnreadWeatherTests
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

        Assumption[] said = [.. Advise(read, Ahead).Assumptions.Where(assumption => assumption.Code == "weather_stale")];

        Assert.Equal(stale, said.Length == 1);
        Assert.All(said, assumption => Assert.StartsWith(
            FormattableString.Invariant($"Nothing was read in the {ageH:0.#} h before loading: nothing was foretold for those hours either."),
            assumption.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void What_was_foretold_stands_in_for_hours_that_nobody_read_and_the_advice_says_so()
    {
        AdviceOutcome advice = Advise(ReadUntil(4), [.. Rainy(5, 13), .. Ahead]);

        Assert.StartsWith(
            "Nothing was read in the 9 h before loading: what was foretold was taken for 9 of those hours.",
            Assert.Single(advice.Assumptions).Text, StringComparison.Ordinal);
        Assert.True(advice.Leaf!.SurfaceWaterKgPerKg.Value > Advise(Read, Ahead).Leaf!.SurfaceWaterKgPerKg.Value + 0.05);
    }

    [Fact]
    public void The_stale_answer_asks_for_the_readings_that_would_help_most()
    {
        Assert.Contains("Dry bulb and wet bulb", Said(Advise(ReadUntil(4), Ahead), "weather_stale"), StringComparison.Ordinal);
        Assert.Contains("Dry bulb and wet bulb", Said(Advise([], Ahead), "no_history"), StringComparison.Ordinal);
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
    public void A_night_foretold_dry_is_not_as_sure_as_one_that_was_read_dry()
    {
        Estimate read = Advise(Read, Ahead).Leaf!.SurfaceWaterKgPerKg;
        Estimate foretold = Advise(ReadUntil(4), [.. Hours(5, 13), .. Ahead]).Leaf!.SurfaceWaterKgPerKg;

        Assert.Equal(read.Value, foretold.Value, 1e-12);
        Assert.True(foretold.StandardDeviation > read.StandardDeviation);
    }

    [Fact]
    public void What_was_read_wins_over_what_was_foretold_for_the_same_hours()
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
    public void A_gauge_read_by_hand_wins_over_the_foretold_rain_of_its_hours()
    {
        IReadOnlyList<WeatherReading> noRain = [.. Read.Select(reading => reading with { RainMm = null })];
        RainTotal[] gauge = [new(InventedDays.At(-24 * 69), LoadedAt, 300)];

        AssertSame(Advise(noRain, Ahead, gauge), Advise(noRain, [.. Hours(-48, 13), .. Ahead], gauge));
    }

    [Fact]
    public void A_single_value_that_nobody_read_is_taken_from_what_was_foretold_and_named()
    {
        IReadOnlyList<WeatherReading> noWind = [.. Read.Select(reading => reading with { WindMPerS = null })];

        AdviceOutcome advice = Advise(noWind, [.. Hours(-71, 13), .. Ahead]);

        Assert.Equal(
            "Before loading, what was foretold was taken where nothing was read: wind 85 h.",
            Assert.Single(advice.Assumptions, assumption => assumption.Code == "foretold_taken").Text);
        Assert.DoesNotContain(advice.Assumptions, assumption => assumption.Code == "no_wind");
    }

    [Fact]
    public void A_foretold_relative_humidity_is_not_put_beside_a_dry_bulb_that_was_read()
    {
        IReadOnlyList<WeatherReading> noHumidity = [.. Read.Select(reading => reading with { DewPointC = null })];
        IEnumerable<WeatherReading> foretold = Hours(-71, 13).Select(reading => reading with { DewPointC = null, RelativeHumidity = 0.5 });

        Assert.Contains(
            "72 of the 72 hours", Said(Advise(noHumidity, [.. foretold, .. Ahead]), "air_unknown"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_that_no_weather_can_have_is_no_reading()
    {
        IReadOnlyList<WeatherReading> read = [.. ReadUntil(4), new(LoadedAt, DryBulbC: -9999, RainMm: -9999)];

        Assert.StartsWith("Nothing was read in the 9 h", Said(Advise(read, [.. Hours(5, 13), .. Ahead]), "weather_stale"), StringComparison.Ordinal);
    }

    [Fact]
    public void Wind_alone_is_no_news_of_the_weather()
    {
        IReadOnlyList<WeatherReading> read = [.. ReadUntil(4), new(LoadedAt, WindMPerS: 2)];

        Assert.StartsWith("Nothing was read in the 9 h", Said(Advise(read, Ahead), "weather_stale"), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_was_read_at_all_the_advice_rests_on_what_was_foretold_and_says_so()
    {
        AdviceOutcome advice = Advise([], [.. Hours(-24, 13), .. Ahead]);

        Assert.StartsWith(
            "Nothing was read before loading: what was foretold was taken for 38 of those hours.",
            Said(advice, "weather_stale"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_weather_gives_the_same_advice_whichever_way_it_came_in()
    {
        IReadOnlyList<WeatherReading> foretold = [.. Rainy(5, 13), .. Ahead];
        AdviceOutcome given = Advise(ReadUntil(4), foretold);

        AssertSame(given, Through(WeatherSource.FeedAnalysis, WeatherSource.FeedForecast, "valley-feed"));
        AssertSame(given, Through(WeatherSource.Observed, WeatherSource.CallerForecast, null));

        AdviceOutcome Through(WeatherSource read, WeatherSource ahead, string? feed)
        {
            ComposedWeather weather = WeatherComposition.Of(
                [
                    .. foretold.Select(reading => new SourcedReading(reading, ahead, feed, LoadedAt)),
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
        IReadOnlyList<WeatherReading> read, IReadOnlyList<WeatherReading> foretold, IReadOnlyList<RainTotal>? gauge = null) =>
        Advisor.Advise(new(
            InventedDays.Site, new Trough(40),
            new Batch(
                new LeafLabel("Invented", "7", null, null, null), InventedDays.At(8), InventedDays.At(12), LoadedAt, 1100),
            read, gauge ?? [], foretold, new WitherCoefficients()));

    private static string Said(AdviceOutcome advice, string code) =>
        Assert.Single(advice.Assumptions, assumption => assumption.Code == code).Text;

    private static void AssertSame(AdviceOutcome wanted, AdviceOutcome found) => Assert.Equivalent(wanted, found, strict: true);
}

using WitherAdvisor.Advice;
using WitherAdvisor.Air;
using WitherAdvisor.Ambient;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;
using WitherAdvisor.Sites;
using WitherAdvisor.Tests.LeafAtLoading;
using WitherAdvisor.Tests.Plans.Search;
using Xunit;

namespace WitherAdvisor.Tests.Readings.Sources;

/// <summary>The two bulbs at the trough against the forecast for the cell of the map that it lies in.</summary>
public sealed class BiasCorrectedForecastTests
{
    private const double PressurePa = MadeProblem.PressurePa;

    private static readonly DateTimeOffset LoadedAt = InventedDays.At(17);

    [Theory]
    [InlineData(21, 17, 2.5, 2.5)]
    [InlineData(18.49, 14.49, 0, 0)] // half a degree is agreement
    [InlineData(17.4, 14.4, -0.1, 0)]
    [InlineData(18, 11, 0, -2.5)]
    [InlineData(31, 2, 10, -10)] // a slip of the pen does not move the night out of this world
    public void Forecast_and_reading_agree_within_half_a_degree_and_what_is_beyond_moves_the_forecast(
        double dryBulbC, double dewPointC, double dryBulbK, double dewPointK)
    {
        BiasCorrectedForecast moved = Moved([Read(0, dryBulbC, dewPointC)], Steady(-1, 30));

        Assert.Equal(dryBulbK, moved.DryBulbK, 1e-6);
        Assert.Equal(dewPointK, moved.DewPointK, 1e-6);
        Assert.Equal(dryBulbK != 0 || dewPointK != 0, moved.IsMoved);
    }

    [Fact]
    public void The_move_wears_off_by_half_in_four_hours_and_is_gone_after_a_day()
    {
        BiasCorrectedForecast moved = Moved([Read(0, 22.5, 18.5)], Steady(-1, 30));

        Assert.Equal([(4, 20.0, 16.0), (8, 19.0, 15.0), (12, 18.5, 14.5), (28, 18.0, 14.0)], At(moved, 4, 8, 12, 28));
    }

    [Fact]
    public void A_forecast_is_drawn_straight_between_its_hours_on_both_sides_of_the_reading()
    {
        IReadOnlyList<WeatherReading> forecast = [Read(-1, 26, 8), Read(1, 20, 12), Read(2, 20, 12)];

        Assert.False(Moved([Read(0, 23.4, 10)], forecast).IsMoved);
        Assert.Equal(2.5, Moved([Read(0, 23, 13)], forecast).DewPointK, 1e-6);
        Assert.Equal(1.5, Moved([Read(0, 25, 10)], forecast).DryBulbK, 1e-6);
        Assert.Equal(26, Moved([Read(0, 25, 10)], forecast).Readings[0].DryBulbC);
    }

    [Theory]
    [InlineData(0, 3, true)]
    [InlineData(-1, 3, true)]
    [InlineData(-1, 3.5, false)]
    [InlineData(1, 1, false)] // a forecast that begins later may change as fast as it likes before
    [InlineData(-5, 1, false)] // and so may one that ends before
    public void A_forecast_that_does_not_hold_the_readings_hour_is_left_alone(double firstHour, double stepH, bool moves)
    {
        IReadOnlyList<WeatherReading> forecast = [.. Enumerable.Range(0, 6).Select(step => Read(firstHour + step * stepH, 18, 14))];

        Assert.Equal(moves, Moved([Read(0, 22, 14)], forecast).IsMoved);
    }

    [Theory]
    [InlineData(-3, true)]
    [InlineData(-3.1, false)] // old news
    [InlineData(2, true)] // read while the wither runs
    public void The_last_reading_counts_from_three_hours_before_loading_on(double hour, bool moves)
    {
        BiasCorrectedForecast moved = Moved([Read(-20, 40, 20), Read(hour, 22.5, 14)], Steady(hour - 0.5, 40));

        Assert.Equal(moves ? 4.0 : 0, moved.DryBulbK, 1e-6);
    }

    [Fact]
    public void Moved_air_is_never_more_than_saturated()
    {
        BiasCorrectedForecast moved = Moved([Read(0, 15, 14)], [Read(-1, 20, 14), Read(2, 20, 14), .. Enumerable.Range(3, 20).Select(hour => Read(hour, 15, 14.9))]);

        Assert.All(moved.Readings, reading => Assert.True(reading.DewPointC <= reading.DryBulbC));
        Assert.Contains(moved.Readings, reading => reading.DewPointC == reading.DryBulbC);
    }

    [Fact]
    public void A_forecast_told_by_relative_humidity_is_moved_as_air()
    {
        double humidity = AirState.FromDewPoint(18, 14, PressurePa).RelativeHumidity;
        IReadOnlyList<WeatherReading> forecast = [.. Steady(-1, 30).Select(reading => reading with { DewPointC = null, RelativeHumidity = humidity, WindMPerS = 3 })];

        BiasCorrectedForecast moved = Moved([Read(0, 22.5, 18.5)], forecast);

        Assert.Equal((20.0, 16.0), (Math.Round(moved.Readings[5].DryBulbC!.Value, 6), Math.Round(moved.Readings[5].DewPointC!.Value, 6)));
        Assert.Null(moved.Readings[5].RelativeHumidity);
        Assert.Equal(3, moved.Readings[5].WindMPerS);
    }

    [Fact]
    public void Of_two_readings_of_one_time_the_last_in_the_list_counts() =>
        Assert.Equal(4, Moved([Read(0, 40, 14), Read(0, 22.5, 14)], Steady(-1, 30)).DryBulbK, 1e-6);

    [Fact]
    public void What_tells_no_air_moves_nothing_and_is_not_moved()
    {
        WeatherReading wind = new(LoadedAt.AddHours(2), WindMPerS: 3);

        Assert.False(Moved([Read(0, 22, 14) with { DewPointC = null }], Steady(-1, 9)).IsMoved);
        Assert.False(Moved([], Steady(-1, 9)).IsMoved);
        Assert.False(Moved([Read(0, 22, 14)], []).IsMoved);
        Assert.Contains(wind, Moved([Read(0, 22, 14)], [.. Steady(-1, 1), wind, .. Steady(3, 9)]).Readings);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    [InlineData(30)]
    public void What_is_read_at_the_trough_is_the_air_of_loading_at_any_minute(int minute)
    {
        DateTimeOffset loadedAt = LoadedAt.AddMinutes(minute);
        ComposedWeather weather = WeatherComposition.Of(
            [
                .. Steady(-80, 0).Select(reading => new SourcedReading(reading, WeatherSource.FeedAnalysis, "valley-feed", loadedAt)),
                .. Steady(1, 40).Select(reading => new SourcedReading(reading, WeatherSource.FeedForecast, "valley-feed", loadedAt)),
                new(new(loadedAt, DryBulbC: 21, DewPointC: 20), WeatherSource.Observed, null, loadedAt),
            ],
            []);
        PlanBasis basis = PlanBasis.Of(Request(loadedAt, weather));

        AmbientForecast night = basis.Ahead.Ambient!;
        Assert.Equal(21, night.Hours[0].DryBulbC, 1e-9);
        Assert.Equal(20, night.Hours[0].DewPointC, 1e-3);
        Assert.InRange(night.Hours[4].DryBulbC, 19.1, 19.4);
        Assumption.ForecastBiasCorrected said = Assert.Single(basis.Assumptions.OfType<Assumption.ForecastBiasCorrected>());
        Assert.Equal(2.5, said.DryBulbK, 0.05);
        Assert.Equal(5.5, said.DewPointK, 0.05);
        Assert.Equal(4, said.HalvesInHours);
    }

    private static AdviceRequest Request(DateTimeOffset loadedAt, ComposedWeather weather) => new(
        InventedDays.Site, new Trough(40), new Batch(new LeafLabel("Invented", "7", null, null, null), InventedDays.At(8), InventedDays.At(15), loadedAt, 1100),
        weather.Weather, weather.RainTotals, weather.ForecastToCompare, new WitherCoefficients());

    private static BiasCorrectedForecast Moved(IReadOnlyList<WeatherReading> readings, IReadOnlyList<WeatherReading> forecast) =>
        BiasCorrectedForecast.Of(readings, forecast, forecast, LoadedAt, PressurePa);

    private static (int Hour, double DryBulbC, double DewPointC)[] At(BiasCorrectedForecast moved, params int[] hours) =>
        [.. hours.Select(hour => moved.Readings.Single(reading => reading.Time == LoadedAt.AddHours(hour)))
            .Select((reading, at) => (hours[at], Math.Round(reading.DryBulbC!.Value, 6), Math.Round(reading.DewPointC!.Value, 6)))];

    /// <summary>18 °C and a dew point of 14 °C each hour from one to another after loading.</summary>
    private static IReadOnlyList<WeatherReading> Steady(double from, double to) =>
        [.. Enumerable.Range(0, (int)(to - from) + 1).Select(hour => Read(from + hour, 18, 14))];

    private static WeatherReading Read(double hour, double dryBulbC, double dewPointC) => new(LoadedAt.AddHours(hour), dryBulbC, dewPointC);
}

using WitherAdvisor.Air;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Hourly;
using Xunit;

namespace WitherAdvisor.Tests.Readings.Hourly;

public sealed class HourlySeriesTests
{
    private const double SitePressurePa = 84_500;

    private static readonly DateTimeOffset Start = new(2026, 3, 10, 0, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Readings_count_in_any_order()
    {
        WeatherReading[] readings = [Air(0, 20, 12), Air(1, 22, 13), Air(2, 21, 14)];

        Assert.Equal(AirAt(Series(readings), 1.5), AirAt(Series([readings[2], readings[0], readings[1]]), 1.5));
    }

    [Fact]
    public void Of_two_readings_of_one_instant_the_later_in_the_list_wins_value_by_value()
    {
        WeatherReading first = Air(1, 20, 12) with { RainMm = 3, WindMPerS = 2 };
        WeatherReading correction = new(At(1), DryBulbC: 24, RainMm: 0);
        HourlySeries series = Series([Air(3, 19, 11), first, correction]);

        Assert.Equal(24, AirAt(series, 1)!.Value.DryBulbC);
        Assert.Equal(AirState.FromDewPoint(24, 12, SitePressurePa).HumidityRatio, AirAt(series, 1)!.Value.HumidityRatio, 1e-15);
        Assert.Equal(0, series.RainMm(1));
        Assert.Equal(2, series.WindAtMPerS(1));
    }

    [Fact]
    public void An_older_dew_point_does_not_overrule_a_newer_wet_bulb()
    {
        HourlySeries series = Series([Air(1, 20, 10), new(At(1), DryBulbC: 20, WetBulbC: 19)]);

        Assert.Equal(AirState.FromWetBulb(20, 19, SitePressurePa).HumidityRatio, AirAt(series, 1)!.Value.HumidityRatio, 1e-15);
    }

    [Fact]
    public void An_impossible_correction_does_not_displace_a_possible_value()
    {
        HourlySeries series = Series([Air(1, 20, 12), new(At(1), DryBulbC: double.NaN)]);

        Assert.Equal(20, AirAt(series, 1)!.Value.DryBulbC);
        Assert.Equal(1, series.ImpossibleValues);
    }

    [Fact]
    public void Air_is_drawn_straight_between_readings_off_the_hour()
    {
        // A zone of half hours: 05:30 of site time is the whole hour of UTC.
        HourlySeries series = Series([Air(0.5, 20, 10), Air(1.5, 24, 10)]);

        Assert.Equal(22, AirAt(series, 1)!.Value.DryBulbC, 1e-12);
    }

    [Fact]
    public void A_report_of_seven_minutes_to_the_hour_counts_for_the_hour()
    {
        HourlySeries series = Series([Air(53 / 60.0, 20, 10)]);

        Assert.Equal(20, AirAt(series, 1)!.Value.DryBulbC);
        Assert.Null(AirAt(series, 0));
        Assert.Null(AirAt(series, 2));
    }

    [Fact]
    public void A_gap_of_three_hours_is_drawn_across_and_a_longer_one_is_unknown()
    {
        HourlySeries short3 = Series([Air(1, 20, 10), Air(4, 26, 10)]);
        HourlySeries long4 = Series([Air(1, 20, 10), Air(5, 28, 10)]);

        Assert.Equal(22, AirAt(short3, 2)!.Value.DryBulbC, 1e-12);
        Assert.Equal(24, AirAt(short3, 3)!.Value.DryBulbC, 1e-12);
        Assert.Null(AirAt(long4, 3));
        Assert.Equal(20, AirAt(long4, 1.4)!.Value.DryBulbC);
        Assert.Null(AirAt(long4, 1.6));
        Assert.Equal(28, AirAt(long4, 5)!.Value.DryBulbC);
    }

    [Fact]
    public void Air_outside_the_hours_is_unknown()
    {
        HourlySeries series = Series([Air(0, 20, 10), Air(10, 20, 10)]);

        Assert.Null(series.AirAt(At(-0.1)));
        Assert.Null(series.AirAt(At(10.1)));
        Assert.NotNull(series.AirAt(At(10)));
    }

    [Theory]
    [InlineData(3, 20.0)] // read then
    [InlineData(3.25, 20.5)] // on the straight line to the next
    [InlineData(2.7, 20.0)] // just before the first
    [InlineData(2.4, null)]
    [InlineData(4.3, 22.0)] // just after the last
    [InlineData(4.6, null)]
    public void Between_whole_hours_the_readings_themselves_tell(double hour, double? dryBulbC)
    {
        HourlySeries series = Series([Air(3, 20, 10), new(At(3.2), WindMPerS: 2), Air(3.5, 21, 10), Air(4, 22, 10)]);

        Assert.Equal(dryBulbC, AirAt(series, hour) is { } air ? Math.Round(air.DryBulbC, 9) : null);
    }

    [Fact]
    public void Wind_that_nobody_read_is_unknown()
    {
        HourlySeries series = Series([new(At(3), WindMPerS: 2)]);

        Assert.Equal(2, series.WindAtMPerS(3));
        Assert.Null(series.WindAtMPerS(5));
    }

    [Fact]
    public void Every_humidity_gives_the_same_air()
    {
        AirState air = AirState.FromRelativeHumidity(22, 0.7, SitePressurePa);
        WeatherReading[] ways =
        [
            new(At(1), 22, DewPointC: air.DewPointC),
            new(At(1), 22, WetBulbC: air.WetBulbC),
            new(At(1), 22, RelativeHumidity: 0.7),
        ];

        Assert.All(ways, way => Assert.Equal(air.HumidityRatio, AirAt(Series([way]), 1)!.Value.HumidityRatio, 1e-8));
    }

    [Fact]
    public void Dew_point_counts_before_wet_bulb_and_that_before_relative_humidity()
    {
        double dewPoint = RatioOf(new(At(1), 22, DewPointC: 10, WetBulbC: 20, RelativeHumidity: 0.9));
        double wetBulb = RatioOf(new(At(1), 22, WetBulbC: 20, RelativeHumidity: 0.9));

        Assert.Equal(AirState.FromDewPoint(22, 10, SitePressurePa).HumidityRatio, dewPoint, 1e-15);
        Assert.Equal(AirState.FromWetBulb(22, 20, SitePressurePa).HumidityRatio, wetBulb, 1e-15);
    }

    [Fact]
    public void A_readings_own_pressure_wins_over_the_sites()
    {
        double valley = RatioOf(Air(1, 22, 15) with { StationPressurePa = 100_000 });

        Assert.Equal(AirState.FromDewPoint(22, 15, 100_000).HumidityRatio, valley, 1e-15);
    }

    [Theory]
    [InlineData(20.4, null, null)]
    [InlineData(null, 20.9, null)]
    [InlineData(null, null, 1.04)]
    public void Rounding_over_saturation_is_taken_as_saturated(double? dewPointC, double? wetBulbC, double? relativeHumidity)
    {
        HourlySeries series = Series([new(At(1), 20, dewPointC, wetBulbC, relativeHumidity)]);

        Assert.Equal(1, AirAt(series, 1)!.Value.RelativeHumidity, 1e-9);
        Assert.Equal(0, series.ImpossibleValues);
    }

    [Fact]
    public void Air_between_two_hours_of_fog_is_not_above_saturation()
    {
        HourlySeries series = Series([Air(1, 10, 10), Air(4, 25, 25)]);

        Assert.Equal(1, AirAt(series, 2.5)!.Value.RelativeHumidity, 1e-9);
    }

    [Theory]
    [InlineData(85.0, null, null, null)]
    [InlineData(20.0, 26.0, null, null)]
    [InlineData(20.0, null, 68.0, null)]
    [InlineData(20.0, null, null, -1.0)]
    public void What_no_weather_can_be_is_unknown_and_counted(
        double dryBulbC, double? dewPointC, double? relativeHumidity, double? rainMm)
    {
        HourlySeries series = Series([new(At(1), dryBulbC, dewPointC, null, relativeHumidity, rainMm)]);

        Assert.Null(AirAt(series, 1));
        Assert.Null(series.RainMm(1));
        Assert.Equal(1, series.ImpossibleValues);
    }

    [Fact]
    public void A_feed_of_a_year_is_held_to_a_length_that_can_be_worked_through()
    {
        HourlySeries series = HourlySeries.Between(DateTimeOffset.MinValue, At(10), [Air(9, 20, 10)], [], SitePressurePa);

        Assert.Equal(HourGrid.MostHours, series.Grid.Hours);
        Assert.Equal(20, AirAt(series, 9)!.Value.DryBulbC);
    }

    private static double RatioOf(WeatherReading reading) => AirAt(Series([reading]), 1)!.Value.HumidityRatio;

    private static DateTimeOffset At(double hour) => Start.AddMinutes(Math.Round(60 * hour));

    private static WeatherReading Air(double hour, double dryBulbC, double dewPointC) => new(At(hour), dryBulbC, dewPointC);

    private static AirState? AirAt(HourlySeries series, double hour) => series.AirAt(At(hour));

    private static HourlySeries Series(IReadOnlyList<WeatherReading> readings) =>
        HourlySeries.Between(Start, At(10), readings, [], SitePressurePa);
}

using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Hourly;
using Xunit;

namespace WitherAdvisor.Tests.Readings.Hourly;

public sealed class HourlyRainTests
{
    private static readonly DateTimeOffset Start = new(2026, 3, 10, 0, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Rain_of_a_reading_fell_in_the_hour_before_it_and_no_other_hour_is_known()
    {
        HourlySeries series = Series([Rain(3, 4)], []);

        Assert.Equal(4, series.RainMm(3));
        Assert.Null(series.RainMm(2));
        Assert.Null(series.RainMm(4));
    }

    [Fact]
    public void Rain_is_never_drawn_across_a_gap()
    {
        HourlySeries series = Series([Rain(2, 4), Rain(4, 4)], []);

        Assert.Null(series.RainMm(3));
    }

    [Fact]
    public void Rain_read_off_the_hour_is_allotted_by_overlap_and_none_is_lost()
    {
        HourlySeries series = Series([.. Enumerable.Range(0, 11).Select(hour => Rain(hour - 7 / 60.0, hour == 5 ? 6 : 0))], []);

        Assert.Equal(6 * 53 / 60.0, series.RainMm(5)!.Value, 1e-9);
        Assert.Equal(6 * 7 / 60.0, series.RainMm(4)!.Value, 1e-9);
        Assert.Equal(6, Sum(series), 1e-9);
    }

    [Fact]
    public void Half_hourly_reports_that_say_to_be_of_the_hour_before_are_not_counted_twice()
    {
        HourlySeries series = Series([.. Enumerable.Range(0, 21).Select(half => Rain(half / 2.0, 2) with { RainMinutes = 60 })], []);

        Assert.Equal(20, Sum(series), 1e-9);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(15)]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(120)]
    [InlineData(360)]
    public void Rain_of_readings_in_a_regular_row_is_of_the_time_between_them(int minutes)
    {
        const double MmPerH = 2;
        int readings = 24 * 60 / minutes;
        WeatherReading[] row = [.. Enumerable.Range(1, readings).Select(at => Rain(at * minutes / 60.0, MmPerH * minutes / 60))];
        HourlySeries series = HourlySeries.Between(Start, Start.AddHours(24), row, [], 101_325);

        Assert.All(Enumerable.Range(1, 24), hour => Assert.Equal(MmPerH, series.RainMm(hour)!.Value, 1e-9));
    }

    [Fact]
    public void What_a_reading_says_of_its_rain_counts_before_the_spacing()
    {
        HourlySeries series = Series([Rain(3, 4) with { RainMinutes = 180 }, Rain(3.25, 1) with { RainMinutes = 15 }], []);

        Assert.All(Hours(series).Take(3), mm => Assert.Equal(4 / 3.0, mm!.Value, 1e-9));
        Assert.Equal(0.25, series.Rain.Known[4], 1e-9);
    }

    [Fact]
    public void A_total_is_spread_over_the_hours_that_have_no_rain_of_their_own()
    {
        HourlySeries series = Series([Rain(2, 4), Rain(3, 0)], [Total(0, 6, 12)]);

        Assert.Equal([2.0, 4, 0, 2, 2, 2, null, null, null, null], Hours(series));
    }

    [Fact]
    public void A_total_of_nothing_makes_its_hours_dry_and_not_unknown()
    {
        HourlySeries series = Series([], [Total(0, 4, 0)]);

        Assert.Equal(0, series.RainMm(4));
        Assert.Null(series.RainMm(5));
    }

    [Fact]
    public void Readings_that_tell_more_than_the_total_keep_what_they_tell()
    {
        HourlySeries series = Series([Rain(1, 9)], [Total(0, 4, 5)]);

        Assert.Equal([9.0, 0, 0, 0], Hours(series).Take(4));
    }

    [Fact]
    public void A_short_total_within_a_long_one_tells_its_own_hours_in_either_order()
    {
        RainTotal day = Total(0, 10, 10);
        RainTotal evening = Total(8, 10, 8);

        Assert.Equal([0.25, 4], [Hours(Series([], [day, evening]))[0], Hours(Series([], [day, evening]))[9]]);
        Assert.Equal(Hours(Series([], [day, evening])), Hours(Series([], [evening, day])));
    }

    [Fact]
    public void A_total_that_began_before_the_hours_leaves_its_share_there()
    {
        HourlySeries series = Series([], [Total(-10, 10, 20)]);

        Assert.Equal(10, Sum(series), 1e-9);
    }

    [Fact]
    public void Early_rain_of_a_total_that_began_before_the_hours_fell_before_them()
    {
        Assert.All(Series([], [Total(-10, 10, 20)]).Rain.StatedEarlyMm, mm => Assert.Equal(0, mm, 1e-12));
        Assert.Equal([0.0, 2, 2, 2, 0], Series([], [Total(-4, 10, 14)]).Rain.StatedEarlyMm[..5]);
    }

    [Fact]
    public void A_total_between_hours_fills_the_part_of_an_hour_that_it_covers()
    {
        HourlySeries series = Series([], [Total(0.25, 1.75, 3)]);

        Assert.Equal([1.5, 1.5, null], Hours(series).Take(3));
    }

    [Fact]
    public void A_feed_says_in_which_part_of_its_stretch_a_total_fell_and_not_how_much()
    {
        HourlySeries series = Series([], [Total(0, 9, 12) with { PatternMm = [0, 50, 150] }]);

        Assert.Equal([0.0, 0, 0, 1, 1, 1, 3, 3, 3, null], Rounded(series));
        Assert.True(series.Rain.IsLaidByFeed);
    }

    [Fact]
    public void Early_and_late_are_within_the_parts()
    {
        HourlySeries series = Series([], [Total(0, 8, 8) with { PatternMm = [0, 3] }]);

        Assert.Equal([0.0, 0, 0, 0, 4, 4, 0, 0], series.Rain.StatedEarlyMm[1..9]);
    }

    [Fact]
    public void Two_parts_share_an_hour_and_none_of_it_stays_unknown()
    {
        HourlySeries series = Series([], [Total(0, 9, 9) with { PatternMm = [1, 0] }]);

        Assert.Equal([2.0, 2, 2, 2, 1, 0, 0, 0, 0, null], Rounded(series));
        Assert.Equal([1.0, 1, 1, 1, 1, 1, 1, 1, 1, 0], series.Rain.Known[1..]);
    }

    [Fact]
    public void What_is_told_of_some_hours_is_not_laid_on_them_again()
    {
        HourlySeries series = Series([Rain(6, 2)], [Total(0, 6, 8) with { PatternMm = [1, 1, 1] }]);

        // 6 mm are left; the last part has one free hour, the others two.
        Assert.Equal([1.2, 1.2, 1.2, 1.2, 1.2, 2], Rounded(series).Take(6));
    }

    [Fact]
    public void A_patterned_total_that_began_before_the_hours_leaves_there_what_fell_there()
    {
        HourlySeries series = Series([], [Total(-10, 10, 20) with { PatternMm = [1, 3] }]);

        Assert.Equal(15, Sum(series), 1e-9);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(double.NaN, 1)]
    [InlineData(double.PositiveInfinity, 1)]
    [InlineData(-1, -2)]
    public void A_pattern_that_tells_of_no_rain_leaves_the_total_spread_evenly(double first, double second)
    {
        HourlySeries series = Series([], [Total(0, 4, 8) with { PatternMm = [first, second] }]);

        Assert.Equal([2.0, 2, 2, 2], Hours(series).Take(4));
        Assert.False(series.Rain.IsLaidByFeed);
    }

    [Fact]
    public void Rain_that_the_feed_tells_only_of_hours_told_already_leaves_the_rest_spread_evenly()
    {
        HourlySeries series = Series([Rain(1, 0), Rain(2, 0)], [Total(0, 4, 8) with { PatternMm = [5, 0] }]);

        Assert.Equal([0.0, 0, 4, 4], Hours(series).Take(4));
    }

    [Theory]
    [InlineData(5, 5, 1)]
    [InlineData(5, 4, 1)]
    [InlineData(0, 4, -1)]
    [InlineData(0, 4, double.PositiveInfinity)]
    public void A_total_that_no_gauge_can_show_is_left_out_and_counted(double from, double to, double rainMm)
    {
        HourlySeries series = Series([], [Total(from, to, rainMm)]);

        Assert.All(Hours(series), hour => Assert.Null(hour));
        Assert.Equal(1, series.ImpossibleValues);
    }

    [Fact]
    public void Radiation_is_of_the_hour_before_and_never_drawn_out()
    {
        HourlySeries series = Series([new(At(3), ShortwaveWPerM2: 500)], []);

        Assert.Equal(500, series.ShortwaveWPerM2(3));
        Assert.Null(series.ShortwaveWPerM2(2));
        Assert.Null(series.ShortwaveWPerM2(4));
    }

    private static DateTimeOffset At(double hour) => Start.AddMinutes(Math.Round(60 * hour));

    private static WeatherReading Rain(double hour, double rainMm) => new(At(hour), RainMm: rainMm);

    private static RainTotal Total(double from, double to, double rainMm) => new(At(from), At(to), rainMm);

    private static HourlySeries Series(IReadOnlyList<WeatherReading> readings, IReadOnlyList<RainTotal> totals) =>
        HourlySeries.Between(Start, At(10), readings, totals, 84_500);

    private static double?[] Hours(HourlySeries series) =>
        [.. Enumerable.Range(1, series.Grid.Hours).Select(series.RainMm)];

    private static double?[] Rounded(HourlySeries series) => [.. Hours(series).Select(mm => mm is { } known ? Math.Round(known, 9) : (double?)null)];

    private static double Sum(HourlySeries series) => Hours(series).Sum(hour => hour ?? 0);
}

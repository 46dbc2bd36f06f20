using WitherAdvisor.Readings;
using Xunit;

namespace WitherAdvisor.Tests.Readings;

public sealed class RainStepsTests
{
    [Fact]
    public void A_regular_row_tells_its_step_from_its_first_reading_to_its_last() =>
        Assert.Equal([0.25, 0.25, 0.25, 0.25], Lengths(0, 0.25, 0.5, 0.75));

    [Fact]
    public void A_clock_that_is_a_minute_off_breaks_no_row() =>
        Assert.All(Lengths(0, 15 / 60.0, 31 / 60.0, 45 / 60.0, 1), hours => Assert.InRange(hours, 0.2, 0.3));

    [Fact]
    public void The_first_reading_after_a_hole_is_of_its_rows_step_and_not_of_the_hole() =>
        Assert.Equal([0.5, 0.5, 0.5, 0.5, 0.5, 0.5], Lengths(0, 0.5, 1, 7, 7.5, 8));

    [Fact]
    public void Readings_at_odd_times_are_of_the_hour_before() =>
        Assert.Equal([1.0, 1, 1, 1], Lengths(0, 53 / 60.0, 1.2, 1 + 53 / 60.0));

    [Fact]
    public void Two_hours_apart_by_chance_are_of_the_hour_before_and_a_row_of_them_of_two() =>
        Assert.Equal((1.0, 2.0), (Lengths(0, 2, 4)[2], Lengths(0, 2, 4, 6)[2]));

    [Fact]
    public void A_day_apart_is_too_far_to_tell() => Assert.All(Lengths(0, 24, 48, 72, 96), hours => Assert.Equal(1, hours));

    [Fact]
    public void A_reading_told_twice_leaves_a_row_of_hours_as_it_is() => Assert.All(Lengths(0, 0, 1, 1, 2, 2), hours => Assert.Equal(1, hours));

    [Fact]
    public void Readings_of_one_source_say_their_step_where_it_is_not_the_hour()
    {
        DateTimeOffset start = new(2026, 3, 1, 0, 0, 0, TimeSpan.Zero);
        WeatherReading[] quarters = [.. Enumerable.Range(0, 8).Select(at => new WeatherReading(start.AddMinutes(15 * at), RainMm: at == 3 ? null : 0.1))];

        IReadOnlyList<WeatherReading> stated = RainSteps.Stated([.. quarters, .. Enumerable.Range(4, 3).Select(hour => new WeatherReading(start.AddHours(hour), RainMm: 1))]);

        Assert.Equal([15, 15, 15, null, 15, 15, 15, 15, null, null, null], stated.Select(reading => reading.RainMinutes));
        Assert.All(stated, reading => Assert.Equal(reading.RainMinutes is null, reading.RainMinutesFrom is null));
    }

    private static double[] Lengths(params double[] position)
    {
        double[] rain = [.. position.Select(_ => 1.0)];
        double[] said = [.. position.Select(_ => double.NaN)];
        return RainSteps.LengthsH(position, rain, said);
    }
}

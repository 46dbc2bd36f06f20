using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Tests.Units;

public sealed class WallClockTests
{
    private static readonly WallClock Kolkata = new("Asia/Kolkata");
    private static readonly WallClock London = new("Europe/London");

    [Fact]
    public void Times_are_read_and_shown_in_the_sites_zone()
    {
        DateTimeOffset? time = Kolkata.Read("2026-11-25", "02:05");

        Assert.Equal(new DateTimeOffset(2026, 11, 24, 20, 35, 0, TimeSpan.Zero), time);
        Assert.Equal("02:05", Kolkata.Clock(time!.Value));
        Assert.Equal("Wed 02:05", Kolkata.DayAndClock(time.Value));
        Assert.Equal("Wed 25 Nov 2026, 02:05", Kolkata.DateAndClock(time.Value));
        Assert.Equal("2026-11-25", Kolkata.DateField(time.Value));
    }

    [Theory]
    [InlineData("14:05")]
    [InlineData("1405")]
    [InlineData(" 14.05 ")]
    public void A_clock_time_may_be_typed_in_a_hurry(string time) =>
        Assert.Equal(new DateTimeOffset(2026, 11, 25, 8, 35, 0, TimeSpan.Zero), Kolkata.Read("2026-11-25", time));

    [Theory]
    [InlineData("905", "09:05")]
    [InlineData("9:05", "09:05")]
    public void A_leading_nought_may_be_left_out(string time, string clock) =>
        Assert.Equal(clock, Kolkata.Clock(Kolkata.Read("2026-11-25", time)!.Value));

    [Theory]
    [InlineData("2026-11-25", "24:00")]
    [InlineData("2026-11-25", "2:05 pm")]
    [InlineData("2026-11-25", "14")]
    [InlineData("2026-11-25", "-1:05")]
    [InlineData("2026-02-30", "10:00")]
    [InlineData("25/11/2026", "10:00")]
    [InlineData("0001-01-01", "00:00")]
    [InlineData("", "")]
    public void What_is_no_24_hour_time_is_refused(string date, string time) => Assert.Null(Kolkata.Read(date, time));

    // IANA zone data: in 2026 London's clocks skip 01:00 to 02:00 on 29 March and repeat it on 25 October.
    [Fact]
    public void A_time_that_the_clocks_skip_is_refused_and_one_that_comes_twice_is_its_first()
    {
        Assert.Null(London.Read("2026-03-29", "01:30"));
        Assert.Equal(new DateTimeOffset(2026, 10, 25, 0, 30, 0, TimeSpan.Zero), London.Read("2026-10-25", "01:30"));
    }

    [Fact]
    public void A_wither_through_the_night_of_the_change_keeps_the_wall_clock()
    {
        DateTimeOffset loaded = London.Read("2026-03-28", "22:00")!.Value;

        Assert.Equal("08:00", London.Clock(loaded.AddHours(9)));
    }

    [Fact]
    public void Seconds_are_rounded_and_forecasts_go_to_five_minutes()
    {
        DateTimeOffset time = new(2026, 1, 1, 12, 7, 29, 999, TimeSpan.Zero);

        Assert.Equal("12:07", London.Clock(time));
        Assert.Equal("12:05", London.Clock(WallClock.ToFiveMinutes(time)));
        Assert.Equal("12:10", London.Clock(WallClock.ToFiveMinutes(time.AddSeconds(1))));
    }

    [Fact]
    public void A_weekday_stands_for_the_date_only_where_it_tells_it()
    {
        DateTimeOffset now = new(2026, 11, 25, 8, 35, 0, TimeSpan.Zero);

        Assert.Equal("Tue 14:05", Kolkata.Near(now.AddDays(-1), now));
        Assert.Equal("Wed 18 Nov 2026, 14:05", Kolkata.Near(now.AddDays(-7), now));
    }

    [Fact]
    public void A_zone_that_nobody_knows_falls_back_to_utc_and_says_so() => Assert.Equal("UTC", new WallClock("Mars/Base").ZoneName);
}

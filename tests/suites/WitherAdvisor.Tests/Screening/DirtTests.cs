using WitherAdvisor.Readings;
using WitherAdvisor.Screening;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Screening;

/// <summary>Real weather of a summer made dirty in every way that was seen, and found by the rule that it was made for.</summary>
public sealed class DirtTests
{
    private static readonly DateTimeOffset Last = new(2013, 9, 15, 18, 0, 0, TimeSpan.Zero);

    private static readonly WeatherReading[] Clean =
        [.. RealWeather.Airport("JFK").Where(reading => reading.Time > Last.AddDays(-92) && reading.Time <= Last)];

    [Fact]
    public void Clean_weather_has_no_fault_and_comes_back_as_it_went_in()
    {
        var screened = ScreenedWeather.Of(RealWeather.Jfk, Clean);

        Assert.Empty(screened.Faults);
        Assert.Same(Clean, screened.Readings);
    }

    [Fact]
    public void A_gauge_that_is_blocked_for_a_rainy_season_is_found_by_humid_middays()
    {
        ScreenedWeather screened = Screen(reading => reading with
        {
            RainMm = 0,
            DewPointC = reading.Time.Day % 3 == 0 ? reading.DryBulbC - 0.5 : reading.DewPointC,
        });

        Assert.Equal("gauge_dry", Assert.Single(screened.Faults).Code);
        Assert.All(screened.Readings, reading => Assert.Null(reading.RainMm));
    }

    [Fact]
    public void A_dry_season_is_no_blocked_gauge() =>
        Assert.Empty(Screen(reading => reading with { RainMm = 0, DewPointC = reading.DryBulbC - 6 + 5.8 * Math.Cos(reading.Time.Hour * Math.PI / 12) }).Faults);

    [Fact]
    public void The_same_four_millimetres_in_every_hour_are_found_and_taken_out()
    {
        ScreenedWeather screened = Screen(reading => reading with { RainMm = 4 });

        Assert.Equal(new Assumption.GaugeRepeats(4, Clean.Length), Assert.Single(screened.Faults));
        Assert.All(screened.Readings, reading => Assert.Null(reading.RainMm));
    }

    [Fact]
    public void Inches_in_a_column_of_millimetres_are_found()
    {
        ScreenedWeather screened = Screen(reading => reading with { RainMm = reading.RainMm / 25.4 });

        Assert.Equal("rain_like_inches", Assert.Single(screened.Faults).Code);
        Assert.All(screened.Readings, reading => Assert.Null(reading.RainMm));
    }

    [Fact]
    public void More_rain_in_an_hour_than_falls_is_found_and_taken_out_alone()
    {
        DateTimeOffset hour = Last.AddHours(-30);
        ScreenedWeather screened = Screen(reading => reading.Time == hour ? reading with { RainMm = 221 } : reading);

        Assert.Equal(new Assumption.RainTooHeavy(221, HeavyRain.MostMmInHour, 1), Assert.Single(screened.Faults));
        Assert.Equal([hour], screened.Readings.Where(reading => reading.RainMm is null && Clean.First(clean => clean.Time == reading.Time).RainMm is not null).Select(reading => reading.Time));
    }

    [Theory]
    [InlineData(5)]
    [InlineData(-5)]
    [InlineData(12)]
    public void Hours_that_are_shifted_are_told_by_the_days_course_of_temperature(int byHours)
    {
        ScreenedWeather screened = Screen(reading => reading with { Time = reading.Time.AddHours(byHours) });

        Assumption.HoursShifted shifted = Assert.IsType<Assumption.HoursShifted>(Assert.Single(screened.Faults));
        Assert.False(shifted.BySun);
        Assert.InRange(Math.Abs(Math.IEEERemainder(shifted.ByHours - byHours, 24)), 0, 2.5);
        Assert.Equal(Clean.Length, screened.Readings.Count);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(12)]
    public void Sun_at_midnight_tells_shifted_hours(int byHours)
    {
        ScreenedWeather screened = Screen(reading => WithSun(reading) with { Time = reading.Time.AddHours(byHours) });

        Assumption.HoursShifted shifted = Assert.IsType<Assumption.HoursShifted>(Assert.Single(screened.Faults));
        Assert.True(shifted.BySun);
        Assert.InRange(Math.Abs(Math.IEEERemainder(shifted.ByHours - byHours, 24)), 0, 0.5);
    }

    [Fact]
    public void Sun_at_noon_is_no_fault() => Assert.Empty(Screen(WithSun).Faults);

    [Fact]
    public void A_thermometer_that_stands_still_for_two_days_is_taken_out_for_those()
    {
        ScreenedWeather screened = Screen(reading => (Last - reading.Time).TotalHours is >= 10 and < 58 ? reading with { DryBulbC = 21.3 } : reading);

        Assert.Equal("thermometer_still", Assert.Single(screened.Faults).Code);
        Assert.All(screened.Readings, reading => Assert.Equal((Last - reading.Time).TotalHours is >= 10 and < 58, reading.DryBulbC is null));
    }

    [Fact]
    public void A_relative_humidity_that_stands_at_100_while_the_air_warms_and_cools_is_taken_out()
    {
        ScreenedWeather screened = Screen(reading => reading with { DewPointC = null, RelativeHumidity = 1 });

        Assert.Equal("humidity_still", Assert.Single(screened.Faults, fault => fault is not Assumption.GaugeDry).Code);
        Assert.DoesNotContain(screened.Readings, reading => reading.HasHumidity && reading.DryBulbC is not null);
    }

    [Fact]
    public void Wind_that_is_always_0_is_unknown()
    {
        ScreenedWeather screened = Screen(reading => reading with { WindMPerS = 0 });

        Assert.Equal("wind_always_calm", Assert.Single(screened.Faults).Code);
        Assert.All(screened.Readings, reading => Assert.Null(reading.WindMPerS));
    }

    [Fact]
    public void Pressure_reduced_to_sea_level_is_found_at_2000_m_and_is_right_at_the_sea()
    {
        ScreenedWeather high = ScreenedWeather.Of(RealWeather.Jfk with { ElevationM = 2_000 }, [.. Clean.Select(reading => reading with { StationPressurePa = 101_300 })]);

        Assert.Equal("pressure_of_sea_level", Assert.Single(high.Faults).Code);
        Assert.All(high.Readings, reading => Assert.Null(reading.StationPressurePa));
        Assert.Empty(Screen(reading => reading with { StationPressurePa = 101_300 }).Faults);
    }

    /// <summary>A clear day's radiation by the sun of the place, for readings that have none.</summary>
    private static WeatherReading WithSun(WeatherReading reading)
    {
        double solarHour = reading.Time.UtcDateTime.TimeOfDay.TotalHours - 0.5 + RealWeather.Jfk.LongitudeDeg / 15;
        return reading with { ShortwaveWPerM2 = Math.Max(-900 * Math.Cos(solarHour * Math.PI / 12) + 100, 0) };
    }

    private static ScreenedWeather Screen(Func<WeatherReading, WeatherReading> dirt) =>
        ScreenedWeather.Of(RealWeather.Jfk, [.. Clean.Select(dirt)]);
}

using WitherAdvisor.Weather.Evaporation;
using Xunit;

namespace WitherAdvisor.Tests.Weather.Evaporation;

/// <summary>Examples of FAO-56 (Allen et al. 1998), each to half of its last printed digit unless it says otherwise.</summary>
public sealed class ReferenceEvapotranspirationTests
{
    [Fact]
    public void Bangkok_in_April_gives_off_what_example_17_prints()
    {
        // 13°44' N, 2 m; 34.8 and 25.6 °C, 2.85 kPa, 2 m/s at 2 m, 8.5 h of sun, 1 K warmer than March.
        SolarDay day = SolarDay.Of(105, 13 + 44 / 60.0);
        double outside = day.RadiationMJPerM2;
        double sunlight = Sunlight.FromSunshine(outside, 8.5, day.DaylightH);
        double clearSky = Sunlight.ClearSky(outside, 2);
        double longwave = NetRadiation.LongwaveOfDay(34.8, 25.6, 2.85, NetRadiation.Clearness(sunlight, clearSky));
        double net = NetRadiation.Shortwave(sunlight) - longwave;
        double soilHeat = 0.14 * 1;

        Assert.Equal(38.06, outside, 0.005);
        Assert.Equal(12.31, day.DaylightH, 0.005);
        Assert.Equal(22.65, sunlight, 0.005);
        Assert.Equal(28.54, clearSky, 0.01);
        Assert.Equal(17.44, NetRadiation.Shortwave(sunlight), 0.005);
        Assert.Equal(3.11, longwave, 0.005);
        Assert.Equal(14.33, net, 0.005);
        Assert.Equal(
            5.72,
            ReferenceEvapotranspiration.OfDayMm(34.8, 25.6, 2.85, 2, net - soilHeat, FaoAir.PressureKPa(2)),
            0.005);
    }

    [Fact]
    public void Uccle_on_the_sixth_of_July_gives_off_what_example_18_prints()
    {
        // 50°48' N, 100 m; 21.5 and 12.3 °C, 84 and 63 %, 10 km/h at 10 m, 9.25 h of sun.
        SolarDay day = SolarDay.Of(187, 50 + 48 / 60.0);
        double outside = day.RadiationMJPerM2;
        double sunlight = Sunlight.FromSunshine(outside, 9.25, day.DaylightH);
        double clearSky = Sunlight.ClearSky(outside, 100);
        double vapour = FaoAir.VapourPressureOfDayKPa(12.3, 21.5, 0.84, 0.63);
        double longwave = NetRadiation.LongwaveOfDay(21.5, 12.3, vapour, NetRadiation.Clearness(sunlight, clearSky));
        double net = NetRadiation.Shortwave(sunlight) - longwave;
        double wind = FaoAir.WindAtTwoMetres(10 / 3.6, 10);

        Assert.Equal(2.078, wind, 0.0005);
        Assert.Equal(1.409, vapour, 0.0005);
        Assert.Equal(41.09, outside, 0.005);
        Assert.Equal(16.1, day.DaylightH, 0.05);
        Assert.Equal(22.07, sunlight, 0.005);
        Assert.Equal(30.90, clearSky, 0.005);
        Assert.Equal(3.71, longwave, 0.005);
        Assert.Equal(13.28, net, 0.005);
        Assert.Equal(
            3.88, ReferenceEvapotranspiration.OfDayMm(21.5, 12.3, vapour, wind, net, FaoAir.PressureKPa(100)), 0.005);
    }

    [Fact]
    public void An_hour_of_the_night_at_NDiaye_gives_off_nothing_as_example_19_prints()
    {
        // 8 m, 1 October, 2 to 3 h; 28 °C, 90 %, 1.9 m/s at 2 m; R_s/R_so of the evening taken as 0.8.
        double vapour = 0.90 * FaoAir.SaturationKPa(28);
        double net = -NetRadiation.LongwaveOfHour(28, vapour, 0.8);
        HourOfAir hour = HourOfAir.Of(28, vapour, 1.9, net, isDay: false, FaoAir.PressureKPa(8));

        Assert.Equal(3.402, vapour, 0.0005);
        Assert.Equal(-0.100, net, 0.0005);
        Assert.Equal(0.00, ReferenceEvapotranspiration.OfHourMm(hour), 0.005);
    }

    [Fact]
    public void An_hour_of_the_afternoon_at_NDiaye_gives_off_what_example_19_prints()
    {
        // 16°13' N, 16°15' W, zone 15° W, so 14 to 15 h there is 15 to 16 h UTC; 38 °C, 52 %, 3.3 m/s, 2.450 MJ/m².
        SolarDay day = SolarDay.Of(274, 16 + 13 / 60.0);
        double middle = day.HourAngleRad(15.5, -16.25);
        double outside = day.RadiationBetweenMJPerM2(middle - Math.PI / 24, middle + Math.PI / 24);
        double clearSky = Sunlight.ClearSky(outside, 8);
        double clearness = NetRadiation.Clearness(2.450, clearSky);
        double vapour = 0.52 * FaoAir.SaturationKPa(38);
        double net = NetRadiation.Shortwave(2.450) - NetRadiation.LongwaveOfHour(38, vapour, clearness);
        HourOfAir hour = HourOfAir.Of(38, vapour, 3.3, net, isDay: true, FaoAir.PressureKPa(8));

        Assert.Equal(0.1889, day.SeasonalCorrectionH, 0.00005);
        Assert.Equal(0.682, middle, 0.0005);
        Assert.Equal(3.543, outside, 0.0005);
        Assert.Equal(2.658, clearSky, 0.0005);
        Assert.Equal(0.922, clearness, 0.0005);
        Assert.Equal(1.749, net, 0.001);
        Assert.Equal(0.63, ReferenceEvapotranspiration.OfHourMm(hour), 0.005);
    }

    [Fact]
    public void A_dark_wet_day_does_not_turn_the_longwave_term_round()
    {
        // Without the bound a sky of R_s/R_so under 0.26 would warm the ground.
        Assert.Equal(0.3, NetRadiation.Clearness(1, 20));
        Assert.True(NetRadiation.LongwaveOfDay(15, 12, 1.5, NetRadiation.Clearness(1, 20)) > 0);
    }

    [Fact]
    public void Light_from_the_range_of_temperature_never_exceeds_a_clear_sky()
    {
        Assert.Equal(Sunlight.ClearSky(30, 1500), Sunlight.FromTemperatureRange(30, 60, 1500));
        Assert.Equal(0.16 * 3 * 30, Sunlight.FromTemperatureRange(30, 9, 1500), 1e-12);
    }
}

using WitherAdvisor.Coefficients;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Canopy;

public sealed class FogAndDrizzleTests
{
    private const int Days = 21;
    private const int Fog = 45;
    private const int SlightDrizzle = 51;

    /// <summary>Near saturation by night and never at it.</summary>
    private static readonly InventedDays Damp = InventedDays.Wet with { DewPointC = 13.2 };

    [Fact]
    public void Three_weeks_in_fog_without_rain_leave_wet_leaf_and_say_that_humidity_told()
    {
        LeafEstimate foggy = Estimate(reading => Saturated(reading));

        Assert.True(foggy.SurfaceWaterKgPerKg.Value > 0.1, $"{foggy.SurfaceWaterKgPerKg.Value}");
        Assert.Contains(foggy.SurfaceWaterKgPerKg.Contributions, piece => piece.Code == "fog" && piece.Amount > 0);
        Assert.Contains(foggy.Missing, missing => missing is Assumption.FogByHumidity);
    }

    [Fact]
    public void A_short_night_of_fog_wets_less_than_weeks_and_is_surer_where_somebody_saw_it()
    {
        bool Night(WeatherReading reading) => reading.Time > InventedDays.At(3) && reading.Time <= InventedDays.At(7);
        LeafEstimate byHumidity = Estimate(reading => Night(reading) ? Saturated(reading) : reading);
        LeafEstimate seen = Estimate(reading => Night(reading) ? Saturated(reading) with { WeatherCode = Fog } : reading with { WeatherCode = 1, VisibilityM = 20_000 });
        LeafEstimate weeks = Estimate(Saturated);

        Assert.InRange(byHumidity.SurfaceWaterKgPerKg.Value, 0.01, weeks.SurfaceWaterKgPerKg.Value - 0.02);
        Assert.DoesNotContain(seen.Missing, missing => missing is Assumption.FogByHumidity);
        Assert.True(seen.SurfaceWaterKgPerKg.Value >= byHumidity.SurfaceWaterKgPerKg.Value);
        Assert.True(byHumidity.SurfaceWaterKgPerKg.StandardDeviation > Estimate(reading => reading).SurfaceWaterKgPerKg.StandardDeviation);
    }

    [Fact]
    public void Saturated_air_with_a_long_view_is_no_fog() =>
        Assert.DoesNotContain(
            Estimate(reading => Saturated(reading) with { VisibilityM = 15_000 }).SurfaceWaterKgPerKg.Contributions, piece => piece.Code == "fog");

    [Fact]
    public void A_short_view_in_humid_air_is_fog_and_in_dry_air_it_is_dust()
    {
        LeafEstimate humid = Estimate(reading => reading with { DewPointC = reading.DryBulbC - 0.3, VisibilityM = 300 });
        LeafEstimate dusty = Estimate(reading => reading with { DewPointC = reading.DryBulbC - 8, VisibilityM = 300 });

        Assert.Contains(humid.SurfaceWaterKgPerKg.Contributions, piece => piece.Code == "fog");
        Assert.DoesNotContain(dusty.SurfaceWaterKgPerKg.Contributions, piece => piece.Code == "fog");
    }

    [Fact]
    public void Drizzle_that_the_gauge_does_not_see_wets_by_its_code()
    {
        double seen = Estimate(reading => reading with { WeatherCode = reading.Time > InventedDays.At(4) ? SlightDrizzle : 3 }).SurfaceWaterKgPerKg.Value;

        Assert.True(seen > Estimate(reading => reading).SurfaceWaterKgPerKg.Value + 0.05, $"{seen}");
    }

    [Fact]
    public void Half_a_millimetre_does_not_wet_like_five()
    {
        double half = AfterRain(0.5);
        double five = AfterRain(5);

        Assert.InRange(half / five, 0.3, 0.65);
        Assert.True(AfterRain(0.1) < 0.3 * five);
        Assert.InRange(AfterRain(20) / five, 1, 1.1);
    }

    private static double AfterRain(double rainMm) =>
        Estimate(reading => reading.Time == InventedDays.At(7) ? reading with { RainMm = rainMm } : reading).SurfaceWaterKgPerKg.Contributions
            .Where(piece => piece.Code == "rain").Sum(piece => piece.Amount);

    private static WeatherReading Saturated(WeatherReading reading) => reading with { DewPointC = reading.DryBulbC };

    private static LeafEstimate Estimate(Func<WeatherReading, WeatherReading> seen) => LeafFromWeather.Estimate(
        InventedDays.Site, [.. Damp.DryHours(Days).Select(seen)], [], InventedDays.Plucked(7, 7), new WitherCoefficients());
}

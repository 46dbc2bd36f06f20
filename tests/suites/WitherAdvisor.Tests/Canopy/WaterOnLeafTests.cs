using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using WitherAdvisor.Readings;
using WitherAdvisor.Tests.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.Canopy;

/// <summary>What rain, dew and sun do to the leaf of the top of the canopy. Bands: common practice, from memory.</summary>
public sealed class WaterOnLeafTests
{
    [Fact]
    public void After_three_wet_days_leaf_carries_much_water()
    {
        // Two hours of rain, two without: 36 mm a day.
        IReadOnlyList<WeatherReading> wet = InventedDays.Wet.Hours(14, hour => hour > -72 && hour % 4 < 2 ? 3 : 0);

        Estimate surface = Surface(wet, 8, 15);

        Assert.InRange(surface.Value, 0.10, 0.30);
        Assert.Equal(EstimateOrigin.FromWeather, surface.Origin);
        Assert.True(Piece(surface, "rain") > 0.95 * surface.Value);
    }

    [Fact]
    public void After_dry_windy_days_leaf_carries_none() =>
        Assert.Equal(0, Surface(InventedDays.DryWindy.DryHours(14), 8, 15).Value);

    [Fact]
    public void An_evening_shower_stands_at_dawn_and_is_gone_by_noon()
    {
        IReadOnlyList<WeatherReading> shower = InventedDays.Ordinary.Hours(14, hour => hour == -5 ? 8 : 0);

        Assert.True(Surface(shower, 5, 6).Value > 0.05);
        Assert.Equal(0, Surface(shower, 12, 15).Value);
    }

    [Fact]
    public void A_clear_calm_night_lays_dew_that_the_morning_sun_takes()
    {
        IReadOnlyList<WeatherReading> calm = (InventedDays.Ordinary with { SwingK = 5, DewPointC = 13, WindMPerS = 0.5 }).DryHours(14);
        Estimate dawn = Surface(calm, 5.5, 6.5);

        // Practice sees 5 to 15 %; without measured sun the sky is taken for clearer than inland, half-way to a coast's.
        Assert.InRange(dawn.Value, 0.05, 0.18);
        Assert.Equal(dawn.Value, Piece(dawn, "dew") + Piece(dawn, "field_to_trough"), 1e-12);
        Assert.Equal(0, Surface(calm, 13, 15).Value);
    }

    [Fact]
    public void A_dry_wind_or_a_closed_sky_lays_less_dew_or_none()
    {
        InventedDays clear = InventedDays.Ordinary with { SwingK = 6, WindMPerS = 0.5, Light = 1.0 };
        double calm = Surface(clear.DryHours(14), 5.5, 6.5).Value;

        Assert.True(Surface((clear with { WindMPerS = 6, DewPointC = 9 }).DryHours(14), 5.5, 6.5).Value < 0.1 * calm);
        Assert.True(Surface((clear with { Light = 0.2 }).DryHours(14), 5.5, 6.5).Value < 0.7 * calm);
    }

    [Fact]
    public void The_sun_does_not_shine_through_rain_where_nobody_measured_it()
    {
        // Ten mornings of showers under a large daily range, which by itself would tell of clear skies.
        InventedDays open = InventedDays.Ordinary with { SwingK = 5, DewPointC = 15 };
        double showers = Surface(open.Hours(14, hour => (hour + 240) % 24 is >= 8 and <= 15 ? 0.2 : 0), 9, 15).Value;
        double measuredSun = Surface(
            (open with { Light = 1.0 }).Hours(14, hour => (hour + 240) % 24 is >= 8 and <= 15 ? 0.2 : 0), 9, 15).Value;

        Assert.True(showers > 1.2 * measuredSun, $"{showers:F3} by diffuse light, {measuredSun:F3} in full sun");
    }

    [Fact]
    public void No_leaf_carries_more_than_it_can_hold()
    {
        var all = new WitherCoefficients { SurfaceRetention = 1 };
        Estimate surface = LeafFromWeather.Estimate(
            InventedDays.Site, InventedDays.Wet.Hours(14, _ => 5), [], InventedDays.Plucked(15, 15), all).SurfaceWaterKgPerKg;

        Assert.Equal(0.35, surface.Value, 1e-12);
        Assert.True(Piece(surface, "held") < 0);
    }

    [Fact]
    public void Water_on_the_leaf_bears_the_loss_on_the_way_to_the_trough()
    {
        IReadOnlyList<WeatherReading> wet = InventedDays.Wet.Hours(14, _ => 2);
        PluckedLeaf atOnce = InventedDays.Plucked(10, 10);
        PluckedLeaf later = atOnce with { LoadedAt = InventedDays.At(15) };

        LeafEstimate fresh = Leaf(wet, atOnce);
        LeafEstimate carried = Leaf(wet, later);

        // 1.2 W/kg (0.6 to 1.8, from memory) at 2.45 MJ/kg is 0.00176 kg/kg an hour.
        Assert.Equal(5 * 1.2 * 3600 / 2.45e6, fresh.SurfaceWaterKgPerKg.Value - carried.SurfaceWaterKgPerKg.Value, 0.0005);
        Assert.Equal(fresh.TissueMoistureWetBasis.Value, carried.TissueMoistureWetBasis.Value, 1e-12);
    }

    private static LeafEstimate Leaf(IReadOnlyList<WeatherReading> readings, PluckedLeaf leaf) =>
        LeafFromWeather.Estimate(InventedDays.Site, readings, [], leaf, new());

    private static Estimate Surface(IReadOnlyList<WeatherReading> readings, double fromHour, double toHour) =>
        Leaf(readings, InventedDays.Plucked(fromHour, toHour)).SurfaceWaterKgPerKg;

    private static double Piece(Estimate estimate, string code) =>
        estimate.Contributions.Where(piece => piece.Code == code).Sum(piece => piece.Amount);
}

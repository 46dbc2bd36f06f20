using WitherAdvisor.Leaf;
using WitherAdvisor.Weather;
using WitherAdvisor.Weather.Spells;
using Xunit;

namespace WitherAdvisor.Tests.Weather;

/// <summary>Water on the leaf that a hand or a scale tells of.</summary>
public sealed class WaterByHandTests
{
    [Fact]
    public void Weather_that_agrees_with_the_hand_makes_it_surer_and_weather_that_contradicts_it_does_not()
    {
        FeltSurfaceWater damp = FeltSurfaceWater.Of(SurfaceFeel.Damp);

        Assert.Equal(0.03 / Math.Sqrt(2), damp.With(FromWeather(0.08, 0.03)).StandardDeviation, 1e-12);
        Assert.Equal(0.03, damp.With(FromWeather(0.30, 0.01)).StandardDeviation, 1e-12);
    }

    [Theory]
    [InlineData(0.10, 1)] // wet leaf lost none of its own water on the way
    [InlineData(0.01, 0.5)] // what was hardly wet has run out for half of it
    [InlineData(0, 0)]
    public void Water_on_the_leaf_bears_what_is_lost_on_the_way_as_far_as_it_lasts(double surfaceKgPerKg, double share)
    {
        Estimate measured = new(surfaceKgPerKg, 0.01, EstimateOrigin.Measured, []);

        Assert.Equal(share * FieldToTrough.LossKgPerKg(3), FieldToTrough.TakenFromSurfaceKgPerKg(3, measured), 1e-12);
    }

    [Fact]
    public void Features_and_spell_in_one_are_those_of_the_estimate()
    {
        IReadOnlyList<WeatherReading> weather = InventedDays.Wet.Hours(40, hour => hour % 5 == 0 ? 3 : 0);
        PluckedLeaf leaf = InventedDays.Plucked(8, 12);
        WitherCoefficients coefficients = new();

        (LeafFeatures features, Spell spell) = LeafFromWeather.FeaturesAndSpell(InventedDays.Site, weather, [], leaf, coefficients);

        Assert.Equal(LeafFromWeather.Features(InventedDays.Site, weather, [], leaf, coefficients.CanopyCapacityMm), features);
        Assert.Equal(LeafFromWeather.Estimate(InventedDays.Site, weather, [], leaf, coefficients).Spell, spell);
    }

    [Fact]
    public void A_site_may_hold_its_spells_by_thresholds_of_its_own()
    {
        Spell Under(SpellThresholds? thresholds) => LeafFromWeather.Estimate(
            InventedDays.Site, InventedDays.Ordinary.Hours(40, hour => hour == -20 ? 3 : 0), [], InventedDays.Plucked(12, 14), new(), thresholds).Spell;

        Assert.Equal(SpellKind.Ordinary, Under(null).Kind);
        Assert.Equal(SpellKind.Wet, Under(new SpellThresholds { WetRainIn72HoursMm = 2, WetEndsBelowRainIn72HoursMm = 1 }).Kind);
    }

    [Fact]
    public void Values_that_no_weather_can_have_are_told_though_nothing_else_is_known() => Assert.Equal(
        ["no_history", "impossible_values"],
        LeafFromWeather.Estimate(InventedDays.Site, [], [new(InventedDays.At(0), InventedDays.At(8), -3)], InventedDays.Plucked(12, 14), new())
            .Missing.Select(assumption => assumption.Code));

    private static Estimate FromWeather(double value, double standardDeviation) => new(value, standardDeviation, EstimateOrigin.FromWeather, []);
}

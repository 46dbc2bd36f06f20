using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.LeafAtLoading;

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

    private static Estimate FromWeather(double value, double standardDeviation) => new(value, standardDeviation, EstimateOrigin.FromWeather, []);
}

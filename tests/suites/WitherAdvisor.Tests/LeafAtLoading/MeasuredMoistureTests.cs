using WitherAdvisor.Leaf;
using WitherAdvisor.LeafAtLoading;
using Xunit;

namespace WitherAdvisor.Tests.LeafAtLoading;

public sealed class MeasuredMoistureTests
{
    [Theory]
    [InlineData(0.76, EstimateOrigin.Measured)]
    [InlineData(0, EstimateOrigin.FromWeather)]
    [InlineData(-0.2, EstimateOrigin.FromWeather)]
    [InlineData(1, EstimateOrigin.FromWeather)]
    [InlineData(1.2, EstimateOrigin.FromWeather)]
    public void An_oven_that_left_nothing_or_took_nothing_measured_nothing(double moisture, EstimateOrigin origin)
    {
        LeafEstimate estimate = LeafFromWeather.Estimate(
            InventedDays.Site, InventedDays.Ordinary.DryHours(70), [], InventedDays.Plucked(8, 12) with { MeasuredMoistureWetBasis = moisture }, new());

        Assert.Equal(origin, estimate.TissueMoistureWetBasis.Origin);
    }
}

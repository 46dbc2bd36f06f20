using WitherAdvisor.Plans.Search;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Plans.Search;

public sealed class AirScaleTests
{
    private static readonly AirScale Scale = new(WitherStyle.Short, 7.2, 0.5, wet: true);

    [Theory]
    [InlineData(AirScale.Harshest, 10, 12, 1, 1)]
    [InlineData(0.5, 8.6, 9.6, 1, 1)]
    [InlineData(AirScale.Wanted, 7.2, 7.2, 1, 1)]
    [InlineData(1.5, 3.6, 3.6, 1, 1)]
    [InlineData(AirScale.Unheated, 0, 0, 1, 1)]
    [InlineData(2.5, 0, 0, 0.75, 1)]
    [InlineData(AirScale.Slowest, 0, 0, 0.5, 1)]
    [InlineData(3.5, 0, 0, 0.5, 0.625)]
    [InlineData(AirScale.Gentlest, 0, 0, 0.5, AirScale.LeastRunShare)]
    public void Each_place_is_gentler_than_the_one_before(double place, double differenceK, double surfaceK, double fanShare, double runShare)
    {
        Assert.Equal(differenceK, Scale.At(place).DifferenceK, 1e-9);
        Assert.Equal(surfaceK, Scale.At(place).SurfaceDifferenceK, 1e-9);
        Assert.Equal(fanShare, Scale.At(place).FanShare, 1e-9);
        Assert.Equal(runShare, Scale.At(place).RunShare, 1e-9);
    }
}

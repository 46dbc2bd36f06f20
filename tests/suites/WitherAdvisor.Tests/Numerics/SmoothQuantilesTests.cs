using WitherAdvisor.Numerics;
using Xunit;

namespace WitherAdvisor.Tests.Numerics;

public sealed class SmoothQuantilesTests
{
    // 1.2816: the normal distribution's ninth decile, any table.
    [Fact]
    public void Of_normal_draws_the_deciles_are_the_normal_ones()
    {
        var quantiles = new SmoothQuantiles([.. Deviates().Select(z => 10 + 2 * z)]);

        Assert.Equal(10 - 2 * 1.2816, quantiles.At(0.1), 0.01);
        Assert.Equal(10, quantiles.At(0.5), 1e-9);
        Assert.Equal(10 + 2 * 1.2816, quantiles.At(0.9), 0.01);
    }

    // Chi-square of 8 degrees of freedom: 3.490, 7.344 and 13.362 (any table of it). The terms left out come to a twentieth
    // of its standard deviation, 4; without the skewness it would be 0.6 off.
    [Fact]
    public void Of_skewed_draws_the_deciles_lean_as_the_distribution_does()
    {
        double[] draws = [.. Enumerable.Range(0, 20_000).Select(i => ChiSquareOf8((i + 0.5) / 20_000))];
        var quantiles = new SmoothQuantiles(draws);

        Assert.Equal(3.490, quantiles.At(0.1), 0.2);
        Assert.Equal(7.344, quantiles.At(0.5), 0.2);
        Assert.Equal(13.362, quantiles.At(0.9), 0.2);
    }

    [Fact]
    public void Draws_that_are_all_alike_have_one_quantile()
    {
        var quantiles = new SmoothQuantiles([3, 3, 3]);

        Assert.Equal((3, 3), (quantiles.At(0.1), quantiles.At(0.9)));
    }

    [Theory]
    [InlineData(0, 100)]
    [InlineData(100, 0)]
    public void However_skewed_they_never_pass_one_another(double most, double odd)
    {
        var quantiles = new SmoothQuantiles([most, most, most, most, most, most, most, odd]);

        Assert.True(quantiles.At(0.1) < quantiles.At(0.5));
        Assert.True(quantiles.At(0.5) < quantiles.At(0.9));
    }

    private static IEnumerable<double> Deviates() =>
        Enumerable.Range(0, 2_000).Select(i => NormalLattice.InverseNormal((i + 0.5) / 2_000));

    /// <summary>Its distribution function has a closed form, turned round by halving.</summary>
    private static double ChiSquareOf8(double share)
    {
        double low = 0;
        double high = 60;
        for (int i = 0; i < 60; i++)
        {
            double x = (low + high) / 2;
            double h = x / 2;
            double below = 1 - Math.Exp(-h) * (1 + h + h * h / 2 + h * h * h / 6);
            (low, high) = below < share ? (x, high) : (low, x);
        }

        return low;
    }
}

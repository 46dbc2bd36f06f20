using WitherAdvisor.Numerics;
using Xunit;

namespace WitherAdvisor.Tests.Numerics;

public sealed class NormalLatticeTests
{
    /// <summary>Stated beside the approximation: 1.2e-9 relative; the tables give six decimals.</summary>
    private const double LastDecimal = 6e-7;

    // Upper critical values of the standard normal distribution as any table prints them, for example NIST/SEMATECH
    // e-Handbook of Statistical Methods, 1.3.6.7.1 (which gives three decimals: 1.282, 1.645, 1.960, 2.326, 2.576,
    // 3.090); the six decimals from memory of Abramowitz and Stegun (1964), table 26.5.
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.75, 0.674490)]
    [InlineData(0.9, 1.281552)]
    [InlineData(0.95, 1.644854)]
    [InlineData(0.975, 1.959964)]
    [InlineData(0.99, 2.326348)]
    [InlineData(0.995, 2.575829)]
    [InlineData(0.999, 3.090232)]
    public void The_inverse_normal_gives_the_tables_quantiles_and_their_mirrors(double share, double deviate)
    {
        Assert.Equal(deviate, NormalLattice.InverseNormal(share), LastDecimal);
        Assert.Equal(-deviate, NormalLattice.InverseNormal(1 - share), LastDecimal);
    }

    [Fact]
    public void The_draws_lean_to_no_side_and_spread_as_a_normal_does()
    {
        List<double[]> draws = [.. NormalLattice.Draws()];

        Assert.Equal(NormalLattice.Count, draws.Count);
        for (int dimension = 0; dimension < NormalLattice.Dimensions; dimension++)
        {
            double[] values = [.. draws.Select(draw => draw[dimension])];
            Assert.Equal(0, values.Average(), 1e-12);
            Assert.InRange(Math.Sqrt(values.Average(value => value * value)), 0.95, 1.05);
        }
    }

    [Fact]
    public void No_two_dimensions_run_together()
    {
        List<double[]> draws = [.. NormalLattice.Draws()];
        for (int one = 0; one < NormalLattice.Dimensions; one++)
        {
            for (int other = one + 1; other < NormalLattice.Dimensions; other++)
            {
                Assert.InRange(draws.Average(draw => draw[one] * draw[other]), -0.1, 0.1);
            }
        }
    }

    [Fact]
    public void The_same_draws_come_every_time() => Assert.Equal(NormalLattice.Draws(), NormalLattice.Draws());
}

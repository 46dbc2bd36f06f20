using FsCheck.Fluent;
using FsCheck.Xunit;
using FsCheck;
using WitherAdvisor.Leaf;
using Xunit;

namespace WitherAdvisor.Tests.Leaf;

public sealed class MoistureTests
{
    // By hand: 0.78/0.22, 0.75/0.25, 0.60/0.40.
    [Theory]
    [InlineData(0.78, 3.5454545)]
    [InlineData(0.75, 3)]
    [InlineData(0.60, 1.5)]
    [InlineData(0, 0)]
    public void Dry_basis_counts_against_dry_matter_alone(double wetBasis, double dryBasis)
    {
        Assert.Equal(dryBasis, Moisture.DryBasis(wetBasis), 1e-7);
        Assert.Equal(wetBasis, Moisture.WetBasis(dryBasis), 1e-7);
    }

    [Property]
    public Property The_two_bases_turn_into_each_other() =>
        Prop.ForAll(Gen.Choose(0, 990).Select(tenths => tenths / 1_000.0).ToArbitrary(), wetBasis =>
            Assert.Equal(wetBasis, Moisture.WetBasis(Moisture.DryBasis(wetBasis)), 1e-14));
}

using WitherAdvisor.Outcomes;
using Xunit;

namespace WitherAdvisor.Tests.Outcomes;

/// <summary>Reckoned by hand: a tonne of green leaf, with 200 g of water on each kg of leaf, came off at half a tonne.</summary>
public sealed class WitherOutcomeTests
{
    private static readonly WitherOutcome HalfATonne = new() { WitheredWeightKg = 500, OvenMoistureWetBasis = 0.6 };

    [Fact]
    public void Outturn_on_green_leaf_counts_its_surface_water() => Assert.Equal(0.5, HalfATonne.OutturnOfGreen(1_000));

    [Fact]
    public void Outturn_on_true_leaf_does_not() => Assert.Equal(0.6, HalfATonne.OutturnOfLeaf(1_000, 0.2)!.Value, 1e-12);

    [Fact]
    public void Two_hundred_kg_of_dry_matter_were_a_fifth_of_the_tonne() =>
        Assert.Equal(0.8, HalfATonne.ImpliedGreenMoistureWetBasis(1_000)!.Value, 1e-12);

    [Fact]
    public void What_was_not_weighed_has_no_outturn()
    {
        Assert.Null(new WitherOutcome().OutturnOfGreen(1_000));
        Assert.Null(HalfATonne.OutturnOfLeaf(1_000, null));
        Assert.Null((HalfATonne with { OvenMoistureWetBasis = null }).ImpliedGreenMoistureWetBasis(1_000));
    }

    [Fact]
    public void A_difference_as_told_wins_over_that_of_the_two_bulbs()
    {
        Assert.Equal(4, new AirHeld(0, 26, 20, 4, null).DifferenceK);
        Assert.Equal(6, new AirHeld(0, 26, 20, null, null).DifferenceK);
        Assert.Null(new AirHeld(0, 26, null, null, null).DifferenceK);
    }
}

using WitherAdvisor.Air;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Bed;

public sealed class BedStateTests
{
    private const double PressurePa = 84_560;

    private static readonly LeafState Loaded = new(0.78, 0.1);

    private static readonly AirByHour Air = new([InletAir.FromDifference(26, 7, PressurePa), InletAir.FromDifference(25, 7, PressurePa)]);

    [Fact]
    public void A_wither_goes_on_from_where_it_stood()
    {
        GivenWither whole = new(Setup(BedState.AtLoading(Loaded)), Air, [2, 4]);
        whole.RunTo(3);
        GivenWither rest = new(Setup(whole.State), Air, [4]);

        whole.RunTo(7);
        rest.RunTo(7);

        Assert.Equal(7, rest.Hour);
        Assert.Equal(whole.Bed.TissueDryBasis.ToArray(), rest.Bed.TissueDryBasis.ToArray());
        Assert.Equal(whole.Bed.SurfaceDryBasis.ToArray(), rest.Bed.SurfaceDryBasis.ToArray());
    }

    [Theory]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(20)]
    public void A_bed_cut_otherwise_holds_the_same_water(int layers)
    {
        BedState state = new(Loaded, 3, [2, 2.4, 2.9, 3.1, 3.3], [0, 0, 0.1, 0.2, 0.4]);

        LeafBed bed = new(Setup(state) with { Layers = layers });

        Assert.Equal(2.74, bed.MeanTissueDryBasis, 1e-12);
        Assert.Equal(0.14, bed.MeanSurfaceDryBasis, 1e-12);
        Assert.True(bed.TissueDryBasis[0] >= 2 && bed.TissueDryBasis[^1] <= 3.3);
    }

    [Fact]
    public void Other_leaf_would_have_kept_the_same_share_of_its_water()
    {
        BedState state = new(Loaded, 3, [2, 3], [0, 0.2]);

        BedState other = state.HadItBeen(new(0.76, 0.05));

        Assert.Equal(2 * (0.76 / 0.24) / (0.78 / 0.22), other.TissueDryBasis[0], 1e-12);
        Assert.Equal(0, other.SurfaceDryBasis[0]);
        Assert.Equal(0.2 * (0.05 / 0.24) / (0.1 / 0.22), other.SurfaceDryBasis[1], 1e-12);
        Assert.Equal(BedState.AtLoading(new(0.76, 0.05)).TissueDryBasis, BedState.AtLoading(Loaded).HadItBeen(new(0.76, 0.05)).TissueDryBasis);
    }

    [Fact]
    public void Leaf_that_had_no_water_on_it_gets_none()
    {
        BedState state = new(new(0.78, 0), 3, [2, 3], [0, 0]);

        Assert.Equal([0, 0], state.HadItBeen(new(0.78, 0.1)).SurfaceDryBasis);
    }

    private static BedSetup Setup(BedState start) => new(
        start, 5.6, Trough.UsualAirflowM3PerSM2, PressurePa, new(PressurePa, MoistAirFormulation.RealGas), new(), 8, 1200);
}

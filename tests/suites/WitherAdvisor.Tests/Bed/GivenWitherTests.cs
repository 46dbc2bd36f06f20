using WitherAdvisor.Air;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Bed;

public sealed class GivenWitherTests
{
    private const double PressurePa = 84_560;

    private static readonly BedSetup Setup = new(
        new LeafState(0.78, 0.1), 28.0 / 1.1 * 0.22, Trough.UsualAirflowM3PerSM2, PressurePa,
        new(PressurePa, MoistAirFormulation.RealGas), new(), 8, 1200);

    private static readonly AirByHour Air = new([InletAir.FromDifference(26, 7, PressurePa), InletAir.FromDifference(25, 7, PressurePa)]);

    [Fact]
    public void Stopping_on_the_way_to_look_changes_hardly_anything()
    {
        GivenWither whole = Wither(2, 4);
        GivenWither looked = Wither(2, 4);
        whole.RunTo(7);
        for (double hour = 0.5; hour <= 7; hour += 0.5)
        {
            looked.RunTo(hour);
        }

        Assert.Equal(7, looked.Hour);
        Assert.Equal(whole.WaterDryBasis, looked.WaterDryBasis, 0.005);
    }

    [Fact]
    public void The_hour_of_a_water_is_the_hour_at_which_it_is_there()
    {
        double hour = Wither(2, 4).RunToWater(2, 30)!.Value;
        GivenWither run = Wither(2, 4);
        run.RunTo(hour);

        Assert.Equal(2, run.WaterDryBasis, 0.01);
    }

    [Fact]
    public void Water_that_is_not_reached_has_no_hour() => Assert.Null(Wither().RunToWater(1, 2));

    [Fact]
    public void A_turn_at_the_end_is_not_done_and_one_before_it_brings_the_dry_leaf_up()
    {
        GivenWither atEnd = Wither(5);
        GivenWither before = Wither(4.9);
        atEnd.RunTo(5);
        before.RunTo(5);

        Assert.True(atEnd.Bed.TissueDryBasis[^1] > atEnd.Bed.TissueDryBasis[0]);
        Assert.True(before.Bed.TissueDryBasis[^1] < before.Bed.TissueDryBasis[0]);
    }

    [Fact]
    public void Warmer_air_dries_faster()
    {
        var usual = new GivenWither(Setup, new([InletAir.FromDifference(26, 7, PressurePa)]), []);
        var warmer = new GivenWither(Setup, new([InletAir.FromDifference(26, 7, PressurePa)], warmerK: 1), []);
        usual.RunTo(5);
        warmer.RunTo(5);

        Assert.True(warmer.WaterDryBasis < usual.WaterDryBasis);
    }

    private static GivenWither Wither(params double[] turns) => new(Setup, Air, turns);
}

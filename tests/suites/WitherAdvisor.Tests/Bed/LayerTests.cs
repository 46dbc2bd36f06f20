using WitherAdvisor.Air;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Bed;

public sealed class LayerTests
{
    private const double PressurePa = 84_560;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void A_bed_has_a_bottom_a_middle_and_a_top_however_it_is_cut(int layers)
    {
        LeafBed bed = new(new(new LeafState(0.78, 0.1), 6, Trough.UsualAirflowM3PerSM2, PressurePa, new(PressurePa, MoistAirFormulation.RealGas), new(), layers, 600));
        InletAir air = InletAir.FromDifference(27, 7, PressurePa);
        for (int step = 0; step < 24; step++)
        {
            bed.Step(600, air, air);
        }

        double[] tissue = [.. bed.TissueDryBasis];
        (double bottom, double middle, double top) = bed.TissueByHeightWetBasis();

        double middleDryBasis = layers % 2 == 1 ? tissue[layers / 2] : (tissue[layers / 2 - 1] + tissue[layers / 2]) / 2;
        Assert.Equal(Moisture.WetBasis(middleDryBasis), middle, 1e-12);
        Assert.Equal(layers == 1, bottom == top);
        Assert.True(bottom <= middle && middle <= top);
        Assert.Equal(layers == 1, bed.TissueSpreadWetBasis() == 0);
    }

    /// <summary>(1 − exp(−x))/x = 1 − x/2 + x²/6 − …, by hand: of a hardly drying layer the first two terms are all of it.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(2e-7)]
    [InlineData(9e-7)]
    [InlineData(1e-3)]
    [InlineData(0.5)]
    public void The_mean_deficit_of_a_layer_is_that_of_an_exponential(double fall)
    {
        LayerDrying drying = new(20 * 0.008, 0.3, 8, 24, 0.013, 180, PressurePa);
        double massOverAirS = fall / (drying.PerDeficit * drying.DeficitPerGain);

        double series = 1 - fall / 2 + fall * fall / 6 - Math.Pow(fall, 3) / 24 + Math.Pow(fall, 4) / 120 - Math.Pow(fall, 5) / 720 + Math.Pow(fall, 6) / 5040;

        Assert.Equal(series, drying.MeanDeficit(1, massOverAirS), fall < 1e-2 ? 1e-10 : 1e-5);
    }

    [Fact]
    public void Water_in_and_on_the_leaf_is_all_that_the_bed_has_at_loading()
    {
        BedSetup setup = new(new LeafState(0.75, 0.2), 6, Trough.UsualAirflowM3PerSM2, PressurePa, new(PressurePa, MoistAirFormulation.RealGas), new(), 8, 1200);

        // A kg of leaf has 0.25 kg of dry matter, 0.75 kg of water in it and 0.2 kg on it.
        Assert.Equal(0.95 / 0.25, new GivenWither(setup, new([new(20, 0.012)]), []).WaterDryBasis, 1e-12);
    }
}

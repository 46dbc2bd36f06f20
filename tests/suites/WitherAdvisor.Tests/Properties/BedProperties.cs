using FsCheck.Xunit;
using WitherAdvisor.Bed;
using Xunit;

namespace WitherAdvisor.Tests.Properties;

/// <summary>What holds of the bed at every step, whatever leaf, air, trough and coefficients.</summary>
[Properties(Arbitrary = [typeof(AnyBed)], MaxTest = 10_000)]
public sealed class BedProperties
{
    private const double Balance = 1e-9;
    private const int Hours = 12;

    /// <summary>Of sums of layers, kg per kg.</summary>
    private const double Rounding = 1e-12;

    [Property]
    public void Water_that_the_leaf_loses_the_air_gains(AnyBed given)
    {
        BedSetup setup = given.Setup(BedResolution.Search);
        var bed = new LeafBed(setup);
        for (int step = 0; step < Hours * 3; step++)
        {
            double before = Water(bed);
            bed.Step(setup.LongestStepS, given.Inlet, given.Inlet);
            double lost = setup.DryMassKgPerM2 * (before - Water(bed));
            double gained = setup.LongestStepS * bed.DryAirKgPerSM2 * (bed.ExhaustHumidityRatio - given.Inlet.HumidityRatio);

            // What a step moves is a difference of sums some thousand times as large; the sums are exact to their last bits.
            Assert.Equal(lost, gained, Balance * Math.Max(lost, setup.DryMassKgPerM2 * before * 1e-4));
        }
    }

    [Property]
    public void No_layer_gains_water_and_none_dries_past_its_equilibrium(AnyBed given)
    {
        BedSetup setup = given.Setup(BedResolution.Search);
        var bed = new LeafBed(setup);
        for (int step = 0; step < Hours * 3; step++)
        {
            double[] tissue = [.. bed.TissueDryBasis];
            double[] surface = [.. bed.SurfaceDryBasis];
            bed.Step(setup.LongestStepS, given.Inlet, given.Inlet);
            for (int i = 0; i < tissue.Length; i++)
            {
                Assert.InRange(bed.TissueDryBasis[i], given.Coefficients.EquilibriumMoistureDryBasis, tissue[i]);
                Assert.InRange(bed.SurfaceDryBasis[i], -Rounding, surface[i]);
            }
        }
    }

    [Property]
    public void A_turn_keeps_the_water_and_never_widens_the_bed(AnyBed given)
    {
        BedSetup setup = given.Setup(BedResolution.Search);
        var bed = new LeafBed(setup);
        for (int step = 0; step < 6; step++)
        {
            bed.Step(setup.LongestStepS, given.Inlet, given.Inlet);
        }

        (double tissue, double surface, double range) = (bed.MeanTissueDryBasis, bed.MeanSurfaceDryBasis, Range(bed));
        bed.Turn();

        Assert.Equal(tissue, bed.MeanTissueDryBasis, Rounding);
        Assert.Equal(surface, bed.MeanSurfaceDryBasis, Rounding);
        Assert.True(Range(bed) <= range + Rounding);
    }

    [Property]
    public void Air_leaves_no_hotter_than_it_came_no_drier_and_never_beyond_saturation(AnyBed given)
    {
        BedSetup setup = given.Setup(BedResolution.Search);
        var bed = new LeafBed(setup);
        for (int step = 0; step < Hours * 3; step++)
        {
            bed.Step(setup.LongestStepS, given.Inlet, given.Inlet);

            Assert.True(bed.ExhaustC <= given.Inlet.DryBulbC + Rounding);
            Assert.True(bed.ExhaustHumidityRatio >= given.Inlet.HumidityRatio - Rounding);
        }

        // By its heat balance the bed takes air down to its wet bulb and no further; the bed's latent heat is rounded otherwise.
        Assert.True(bed.ExhaustC >= given.Plenum.WetBulbC - 0.1, $"{bed.ExhaustC} under {given.Plenum.WetBulbC}");
    }

    private static double Water(LeafBed bed) => bed.MeanTissueDryBasis + bed.MeanSurfaceDryBasis;

    private static double Range(LeafBed bed) => bed.TissueDryBasis.ToArray().Max() - bed.TissueDryBasis.ToArray().Min();
}

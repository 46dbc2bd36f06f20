using WitherAdvisor.Air;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Bed;

public sealed class GrowingBedTests
{
    private const double PressurePa = 84_560;
    private const int Layers = 8;

    private static readonly LeafState First = new(0.78, 0.1);
    private static readonly LeafState Second = new(0.80, 0.2);
    private static readonly LaidLot Lot = new(3, Second, 10);

    private static readonly AirByHour Air = new([InletAir.FromDifference(26, 7, PressurePa), InletAir.FromDifference(25, 7, PressurePa)]);

    [Theory]
    [InlineData(0.7)]
    [InlineData(5)]
    [InlineData(37)]
    public void Leaf_laid_on_brings_its_own_water_and_takes_none(double loadKgPerM2)
    {
        LeafBed bed = Dried();
        LaidLot lot = Lot with { LoadKgPerM2 = loadKgPerM2 };
        double tissue = bed.DryMassKgPerM2 * bed.MeanTissueDryBasis;
        double surface = bed.DryMassKgPerM2 * bed.MeanSurfaceDryBasis;
        double dry = bed.DryMassKgPerM2;
        BedState laid = BedState.AtLoading(Second);

        bed.Lay(lot);

        Assert.Equal(dry + lot.DryMassKgPerM2, bed.DryMassKgPerM2, 1e-12);
        Assert.Equal(tissue + lot.DryMassKgPerM2 * laid.TissueDryBasis[0], bed.DryMassKgPerM2 * bed.MeanTissueDryBasis, 1e-10);
        Assert.Equal(surface + lot.DryMassKgPerM2 * laid.SurfaceDryBasis[0], bed.DryMassKgPerM2 * bed.MeanSurfaceDryBasis, 1e-10);
    }

    [Fact]
    public void Leaf_laid_on_lies_on_top_and_what_lay_there_below()
    {
        LeafBed bed = Dried();
        double atMesh = bed.TissueDryBasis[0];

        bed.Lay(Lot);

        Assert.Equal(BedState.AtLoading(Second).TissueDryBasis[0], bed.TissueDryBasis[^1], 1e-10);
        Assert.Equal(atMesh, bed.TissueDryBasis[0], 0.1);
    }

    [Fact]
    public void The_weight_grows_by_what_is_laid_on()
    {
        var bed = new LeafBed(Setup());
        double before = bed.DryMassKgPerM2 * (1 + bed.MeanWaterDryBasis);

        bed.Lay(Lot);

        Assert.Equal(before + Lot.LoadKgPerM2, bed.DryMassKgPerM2 * (1 + bed.MeanWaterDryBasis), 1e-10);
    }

    [Fact]
    public void The_same_leaf_laid_on_at_the_first_hour_dries_as_if_it_had_been_loaded_with_it()
    {
        BedSetup whole = Setup() with { DryMassKgPerM2 = 2 * First.DryMatterKg(14) };
        BedSetup lots = Setup() with { DryMassKgPerM2 = First.DryMatterKg(14), Later = [new(0, First, 14)] };
        GivenWither atOnce = new(whole, Air, [2, 4]);
        GivenWither inLots = new(lots, Air, [2, 4]);

        atOnce.RunTo(6);
        inLots.RunTo(6);

        Assert.Equal(atOnce.Bed.DryMassKgPerM2, inLots.Bed.DryMassKgPerM2, 1e-12);
        Assert.All(Enumerable.Range(0, Layers), i => Assert.Equal(atOnce.Bed.TissueDryBasis[i], inLots.Bed.TissueDryBasis[i], 1e-10));
    }

    [Fact]
    public void Leaf_is_laid_on_when_the_bed_is_run_past_the_hour_and_not_to_it()
    {
        GivenWither wither = new(Setup() with { Later = [Lot] }, Air, []);
        double first = wither.Bed.DryMassKgPerM2;

        wither.RunTo(3);
        Assert.Equal(first, wither.Bed.DryMassKgPerM2);

        wither.RunTo(3.1);
        Assert.Equal(first + Lot.DryMassKgPerM2, wither.Bed.DryMassKgPerM2, 1e-12);
    }

    [Fact]
    public void A_grown_bed_goes_on_from_where_it_stood()
    {
        BedSetup growing = Setup() with { Later = [Lot] };
        GivenWither whole = new(growing, Air, [4, 5]);
        whole.RunTo(4.5);
        BedSetup grown = growing with { Start = whole.State, DryMassKgPerM2 = whole.Bed.DryMassKgPerM2, Later = [] };
        GivenWither rest = new(grown, Air, [5]);

        whole.RunTo(7);
        rest.RunTo(7);

        Assert.All(Enumerable.Range(0, Layers), i => Assert.Equal(whole.Bed.TissueDryBasis[i], rest.Bed.TissueDryBasis[i], 1e-12));
        Assert.All(Enumerable.Range(0, Layers), i => Assert.Equal(whole.Bed.SurfaceDryBasis[i], rest.Bed.SurfaceDryBasis[i], 1e-12));
    }

    [Fact]
    public void What_was_loaded_is_the_mean_of_the_lots_and_holds_their_dry_matter()
    {
        var bed = new LeafBed(Setup());
        bed.Lay(Lot);

        Assert.Equal(bed.DryMassKgPerM2, bed.Loaded.DryMatterKg(28 + Lot.LoadKgPerM2), 1e-12);
        Assert.InRange(bed.Loaded.TissueMoistureWetBasis, First.TissueMoistureWetBasis, Second.TissueMoistureWetBasis);
        Assert.InRange(bed.Loaded.SurfaceWaterKgPerKg, First.SurfaceWaterKgPerKg, Second.SurfaceWaterKgPerKg);
    }

    private static LeafBed Dried()
    {
        GivenWither wither = new(Setup(), Air, [2]);
        wither.RunTo(3);
        return wither.Bed;
    }

    private static BedSetup Setup() => new(
        BedState.AtLoading(First), First.DryMatterKg(28), Trough.UsualAirflowM3PerSM2, PressurePa,
        new(PressurePa, MoistAirFormulation.RealGas), new(), Layers, 1200);
}

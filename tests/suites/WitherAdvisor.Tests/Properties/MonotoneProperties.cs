using FsCheck.Xunit;
using WitherAdvisor.Ambient;
using WitherAdvisor.Bed;
using WitherAdvisor.Leaf;
using WitherAdvisor.Plans;
using Xunit;

namespace WitherAdvisor.Tests.Properties;

/// <summary>Which way the hours of a fixed wither move when one thing alone is changed.</summary>
[Properties(Arbitrary = [typeof(AnyBed)], MaxTest = 10_000)]
public sealed class MonotoneProperties
{
    private const double HorizonHours = 30;

    /// <summary>What the cut of the bed in height and time may move, relative.</summary>
    private const double CutTolerance = 0.0002;

    private static readonly BedResolution Resolution = new(12, 600);

    [Property]
    public void Hotter_air_of_the_same_humidity_ratio_never_takes_longer(AnyBed bed) =>
        AssertNoLonger(bed with { Plenum = bed.Plenum with { DryBulbC = bed.Plenum.DryBulbC + 1 } }, bed);

    [Property]
    public void Drier_air_of_the_same_dry_bulb_never_takes_longer(AnyBed bed) =>
        AssertNoLonger(bed with { Plenum = bed.Plenum with { HumidityRatio = 0.95 * bed.Plenum.HumidityRatio } }, bed);

    [Property]
    public void Faster_air_never_takes_longer(AnyBed bed) =>
        AssertNoLonger(bed with { AirflowM3PerSM2 = 1.1 * bed.AirflowM3PerSM2 }, bed);

    [Property]
    public void A_thinner_spread_never_takes_longer(AnyBed bed) =>
        AssertNoLonger(bed with { LoadKgPerM2 = 0.9 * bed.LoadKgPerM2 }, bed);

    [Property]
    public void More_rain_on_the_same_leaf_never_makes_it_faster(AnyBed bed)
    {
        double more = bed.Leaf.SurfaceWaterKgPerKg + 0.03;
        AssertNoLonger(bed, bed with
        {
            Leaf = bed.Leaf with { SurfaceWaterKgPerKg = more },
            LoadKgPerM2 = bed.LoadKgPerM2 * (1 + more) / (1 + bed.Leaf.SurfaceWaterKgPerKg),
        });
    }

    [Property]
    public void More_rain_in_the_same_leaf_never_makes_it_faster(AnyBed bed)
    {
        double more = bed.Leaf.TissueMoistureWetBasis + 0.01;
        AssertNoLonger(bed, bed with
        {
            Leaf = bed.Leaf with { TissueMoistureWetBasis = more },
            LoadKgPerM2 = bed.LoadKgPerM2 * (1 - bed.Leaf.TissueMoistureWetBasis) / (1 - more),
        });
    }

    private static void AssertNoLonger(AnyBed quick, AnyBed slow)
    {
        double? hours = HoursToTarget(quick);
        double? longer = HoursToTarget(slow);
        Assert.True(longer is null || hours <= longer * (1 + CutTolerance), $"{hours} h, but {longer} h");
    }

    private static double? HoursToTarget(AnyBed bed)
    {
        var night = new AmbientForecast([bed.Plenum, bed.Plenum]);
        PlenumSchedule air = PlenumSchedule.Ambient(night);
        return TrialWither.Run(
            bed.Setup(Resolution), new(air, air, TurnRule.Every(bed.TurnEveryHours, HorizonHours), Moisture.DryBasis(bed.TargetWetBasis), 0, HorizonHours)).TargetHour;
    }
}

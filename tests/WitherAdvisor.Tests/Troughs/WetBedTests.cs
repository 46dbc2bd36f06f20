using WitherAdvisor.Air;
using WitherAdvisor.Leaf;
using WitherAdvisor.Troughs;
using Xunit;

namespace WitherAdvisor.Tests.Troughs;

/// <summary>While water stands on all of the leaf the bed is a wet bulb: its air leaves nearly saturated.</summary>
public sealed class WetBedTests
{
    private const double DryBulbC = 25;
    private const double DifferenceK = 3;
    private const double SecondsPerHour = 3600;
    private const double MoistureWetBasis = 0.78;

    // 0.40 kg/h·m² and K of hygrometric difference at sea level, 0.335 at 1,500 m, at the usual 0.2286 m³/s·m²: worked
    // out independently for this project for air that leaves saturated, at no stated temperature. Their last digit is
    // 1.3 and 0.2 %, and between 20 and 30 °C the flow of dry air and its heat move them by 2 %. A bed of the usual load
    // leaves some 4 % of the difference unspent; one three times as thick hardly any.
    [Theory]
    [InlineData(0, 0.40)]
    [InlineData(1_500, 0.335)]
    public void A_wet_bed_dries_as_the_air_brings_heat(double elevationM, double saturatingKgPerHourM2AndK)
    {
        Assert.InRange(WetBed(elevationM, 84).KgPerHourM2AndK / saturatingKgPerHourM2AndK, 0.98, 1.02);
        Assert.InRange(WetBed(elevationM, 28).KgPerHourM2AndK / saturatingKgPerHourM2AndK, 0.94, 1.00);
    }

    [Fact]
    public void The_air_leaves_it_nearly_saturated_at_its_wet_bulb()
    {
        (_, AirState exhaust, AirState plenum) = WetBed(1_500, 28);

        Assert.InRange(exhaust.RelativeHumidity, 0.98, 1);
        Assert.Equal(plenum.WetBulbC, exhaust.DryBulbC, 0.05 * DifferenceK);
        Assert.Equal(plenum.WetBulbC, exhaust.WetBulbC, 0.02);
    }

    /// <summary>Loss over a step so short that all stays wet, and the air behind and before the bed.</summary>
    private static (double KgPerHourM2AndK, AirState Exhaust, AirState Plenum) WetBed(double elevationM, double loadKgPerM2)
    {
        double pressurePa = StandardAtmosphere.PressurePa(elevationM);
        AirState plenum = AirState.FromWetBulb(DryBulbC, DryBulbC - DifferenceK, pressurePa);
        double dryKgPerM2 = loadKgPerM2 * (1 - MoistureWetBasis);
        LeafBed bed = new(new BedSetup(
            new LeafState(MoistureWetBasis, 0.35), dryKgPerM2, Trough.UsualAirflowM3PerSM2, pressurePa,
            new SaturationTable(pressurePa, MoistAirFormulation.RealGas), new WitherCoefficients(), 40, 1));
        double before = bed.MeanSurfaceDryBasis + bed.MeanTissueDryBasis;
        InletAir inlet = new(plenum.DryBulbC, plenum.HumidityRatio);
        bed.Step(1, inlet, inlet);
        double lost = before - bed.MeanSurfaceDryBasis - bed.MeanTissueDryBasis;
        AirState exhaust = plenum with { DryBulbC = bed.ExhaustC, HumidityRatio = bed.ExhaustHumidityRatio };
        return (SecondsPerHour * dryKgPerM2 * lost / DifferenceK, exhaust, plenum);
    }
}

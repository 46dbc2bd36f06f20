using WitherAdvisor.Air;
using WitherAdvisor.Bed;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Sites;
using Xunit;

namespace WitherAdvisor.Tests.Bed;

/// <summary>While water stands on all of the leaf the bed is a wet bulb: its air leaves nearly saturated.</summary>
public sealed class WetBedTests
{
    private const double DryBulbC = 25;
    private const double DifferenceK = 3;
    private const double MoistureWetBasis = 0.78;

    [Fact]
    public void The_air_leaves_it_nearly_saturated_at_its_wet_bulb()
    {
        (AirState exhaust, AirState plenum) = WetBed(1_500, 28);

        Assert.InRange(exhaust.RelativeHumidity, 0.98, 1);
        Assert.Equal(plenum.WetBulbC, exhaust.DryBulbC, 0.05 * DifferenceK);
        Assert.Equal(plenum.WetBulbC, exhaust.WetBulbC, 0.02);
    }

    /// <summary>The air behind and before a bed over a step so short that all stays wet.</summary>
    private static (AirState Exhaust, AirState Plenum) WetBed(double elevationM, double loadKgPerM2)
    {
        double pressurePa = StandardAtmosphere.PressurePa(elevationM);
        AirState plenum = AirState.FromWetBulb(DryBulbC, DryBulbC - DifferenceK, pressurePa);
        double dryKgPerM2 = loadKgPerM2 * (1 - MoistureWetBasis);
        LeafBed bed = new(new BedSetup(
            new LeafState(MoistureWetBasis, 0.35), dryKgPerM2, Trough.UsualAirflowM3PerSM2, pressurePa,
            new SaturationTable(pressurePa, MoistAirFormulation.RealGas), new WitherCoefficients(), 40, 1));
        InletAir inlet = new(plenum.DryBulbC, plenum.HumidityRatio);
        bed.Step(1, inlet, inlet);
        AirState exhaust = plenum with { DryBulbC = bed.ExhaustC, HumidityRatio = bed.ExhaustHumidityRatio };
        return (exhaust, plenum);
    }
}

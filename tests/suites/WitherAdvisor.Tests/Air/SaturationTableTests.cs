using FsCheck;
using FsCheck.Fluent;
using WitherAdvisor.Air;
using Xunit;

namespace WitherAdvisor.Tests.Air;

/// <summary>The table against the equations that it is made from.</summary>
public sealed class SaturationTableTests
{
    private const double StatedPressureError = 1e-7;
    private const double StatedSlopeError = 5e-4;
    private const double DifferenceK = 1e-3;

    [Fact]
    public void Pressure_and_slope_lie_within_the_stated_error_from_1_to_80_degrees()
    {
        Gen<(double, double, MoistAirFormulation)> anywhere =
            from temperatureC in AnyAir.Between(1, 79.9)
            from elevationM in AnyAir.Between(0, 3_000)
            from formulation in Gen.Elements(MoistAirFormulation.RealGas, MoistAirFormulation.IdealGas)
            select (temperatureC, StandardAtmosphere.PressurePa(elevationM), formulation);
        Prop.ForAll(anywhere.ToArbitrary(), ((double C, double Pa, MoistAirFormulation By) at) =>
        {
            SaturationTable table = new(at.Pa, at.By);
            double exact = Saturation.VapourPressurePa(at.C, at.Pa, at.By);
            double slope = (Saturation.VapourPressurePa(at.C + DifferenceK, at.Pa, at.By)
                - Saturation.VapourPressurePa(at.C - DifferenceK, at.Pa, at.By)) / (2 * DifferenceK);

            Assert.InRange(table.PressurePa(at.C) / exact, 1 - StatedPressureError, 1 + StatedPressureError);
            Assert.InRange(table.SlopePaPerK(at.C) / slope, 1 - StatedSlopeError, 1 + StatedSlopeError);
        }).QuickCheckThrowOnFailure();
    }

    [Theory]
    [InlineData(-100, -40)]
    [InlineData(200, 80)]
    public void Outside_its_range_the_nearer_end_is_read(double outsideC, double endC)
    {
        SaturationTable table = new(StandardAtmosphere.SeaLevelPressurePa, MoistAirFormulation.RealGas);
        double end = Saturation.VapourPressurePa(endC, StandardAtmosphere.SeaLevelPressurePa, MoistAirFormulation.RealGas);

        Assert.InRange(table.PressurePa(outsideC) / end, 1 - StatedPressureError, 1 + StatedPressureError);
    }
}

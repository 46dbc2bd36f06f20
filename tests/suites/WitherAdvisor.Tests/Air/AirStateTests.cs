using FsCheck.Xunit;
using WitherAdvisor.Air;
using Xunit;

namespace WitherAdvisor.Tests.Air;

[Properties(Arbitrary = [typeof(AnyAir)], MaxTest = 10_000)]
public sealed class AirStateTests
{
    private const double SolverSlackK = 2e-9;

    [Property]
    public void Dew_point_is_below_wet_bulb_and_wet_bulb_below_dry_bulb(AirState air)
    {
        Assert.True(air.DewPointC <= air.WetBulbC + SolverSlackK, $"dew point {air.DewPointC}, wet bulb {air.WetBulbC}");
        Assert.True(air.WetBulbC <= air.DryBulbC, $"wet bulb {air.WetBulbC}, dry bulb {air.DryBulbC}");
    }

    [Property]
    public void Wet_bulb_gives_the_air_back(AirState air)
    {
        AirState back = AirState.FromWetBulb(air.DryBulbC, air.WetBulbC, air.PressurePa, air.Formulation);

        Assert.Equal(air.HumidityRatio, back.HumidityRatio, 1e-11);
    }

    [Property]
    public void Dew_point_gives_the_air_back(AirState air)
    {
        double dewPointC = air.DewPointC;
        AirState back = AirState.FromDewPoint(air.DryBulbC, dewPointC, air.PressurePa, air.Formulation);

        // Buck's factors over water and over ice leave a gap of some hundred-thousandths at the triple point.
        double tolerance = Math.Abs(dewPointC - Saturation.TriplePointC) < SolverSlackK ? 2e-4 : 1e-9;
        Assert.Equal(1, back.HumidityRatio / air.HumidityRatio, tolerance);
    }

    [Property]
    public void Relative_humidity_gives_the_air_back(AirState air)
    {
        AirState back = AirState.FromRelativeHumidity(
            air.DryBulbC, air.RelativeHumidity, air.PressurePa, air.Formulation);

        Assert.Equal(1, back.HumidityRatio / air.HumidityRatio, 1e-12);
    }

    [Property]
    public void Enthalpy_gives_the_dry_bulb_back(AirState air) =>
        Assert.Equal(air.DryBulbC, MoistAir.DryBulbFromEnthalpyC(air.EnthalpyKJPerKg, air.HumidityRatio), 1e-10);

    [Property]
    public void Real_gas_holds_a_little_more_vapour_than_ideal_gas(AirState air)
    {
        double real = MoistAir.SaturatedHumidityRatio(air.DryBulbC, air.PressurePa, MoistAirFormulation.RealGas);
        double ideal = MoistAir.SaturatedHumidityRatio(air.DryBulbC, air.PressurePa, MoistAirFormulation.IdealGas);

        Assert.InRange(real / ideal, 1.002, 1.01);
    }

    [Property]
    public void Saturated_air_has_one_temperature(AirState air)
    {
        AirState saturated = AirState.FromRelativeHumidity(air.DryBulbC, 1, air.PressurePa, air.Formulation);

        Assert.Equal(air.DryBulbC, saturated.WetBulbC, SolverSlackK);
        Assert.Equal(air.DryBulbC, saturated.DewPointC, SolverSlackK);
    }

    [Property]
    public void Slope_of_saturation_is_its_derivative(AirState air)
    {
        const double StepK = 1e-3;
        double centreC = Math.Abs(air.DryBulbC - Saturation.TriplePointC) < 2 * StepK ? 1 : air.DryBulbC;
        double difference = (Saturation.PressurePa(centreC + StepK) - Saturation.PressurePa(centreC - StepK)) / (2 * StepK);

        Assert.Equal(1, Saturation.SlopePaPerK(centreC) / difference, 1e-7);
    }

    [Fact]
    public void A_frozen_wick_reads_by_the_ice_equation()
    {
        AirState air = AirState.FromWetBulb(-1, -5, 95_461, MoistAirFormulation.IdealGas);

        Assert.Equal(-5, air.WetBulbC, SolverSlackK);
    }

    [Fact]
    public void A_wick_near_freezing_is_taken_to_be_liquid_where_both_equations_fit()
    {
        AirState air = AirState.FromWetBulb(6, 0.05, 85_000);
        double iceRoot = AirState.FromWetBulb(6, -0.3, 85_000).HumidityRatio;

        Assert.True(iceRoot > air.HumidityRatio, "over ice the same humidity ratio belongs to a colder wick");
        Assert.Equal(0.05, air.WetBulbC, SolverSlackK);
    }
}

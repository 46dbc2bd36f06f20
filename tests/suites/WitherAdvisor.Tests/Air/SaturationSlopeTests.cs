using WitherAdvisor.Air;
using Xunit;

namespace WitherAdvisor.Tests.Air;

public sealed class SaturationSlopeTests
{
    private const double StepK = 1e-3;

    /// <summary>By the definition of a derivative: what central differences of the vapour pressure give, over ice and over water.</summary>
    [Fact]
    public void Slope_is_the_derivative_of_the_vapour_pressure()
    {
        for (double temperatureC = -60.5; temperatureC < 65; temperatureC += 2.5)
        {
            double differences = (Saturation.PressurePa(temperatureC + StepK) - Saturation.PressurePa(temperatureC - StepK)) / (2 * StepK);
            Assert.InRange(Saturation.SlopePaPerK(temperatureC) / differences, 1 - 1e-7, 1 + 1e-7);
        }
    }

    /// <summary>ASHRAE Handbook – Fundamentals 2017 (SI), ch. 1, eq. 35: wet bulb of ice.</summary>
    [Theory]
    [InlineData(-5, -6)]
    [InlineData(-10, -10.5)]
    public void Humidity_ratio_over_ice_is_that_of_the_handbooks_equation(double dryBulbC, double wetBulbC)
    {
        const double pressurePa = 85_000;
        double saturated = MoistAir.SaturatedHumidityRatio(wetBulbC, pressurePa, MoistAirFormulation.IdealGas);

        double lhs = MoistAir.HumidityRatioFromWetBulb(dryBulbC, wetBulbC, pressurePa, MoistAirFormulation.IdealGas) * (2830 + 1.86 * dryBulbC - 2.1 * wetBulbC);

        Assert.Equal((2830 - 0.24 * wetBulbC) * saturated - 1.006 * (dryBulbC - wetBulbC), lhs, 1e-12);
    }
}

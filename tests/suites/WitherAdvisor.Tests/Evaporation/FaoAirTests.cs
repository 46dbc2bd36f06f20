using WitherAdvisor.Evaporation;
using Xunit;

namespace WitherAdvisor.Tests.Evaporation;

public sealed class FaoAirTests
{
    // FAO Irrigation and Drainage Paper 56, example 6.
    [Fact]
    public void Vapour_pressure_deficit_of_a_day_is_that_of_example_6()
    {
        double saturation = (FaoAir.SaturationKPa(18) + FaoAir.SaturationKPa(25)) / 2;

        Assert.Equal(0.91, saturation - FaoAir.VapourPressureOfDayKPa(18, 25, 0.82, 0.54), 0.005);
    }
}

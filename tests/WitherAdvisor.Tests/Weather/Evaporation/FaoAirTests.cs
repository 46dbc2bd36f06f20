using WitherAdvisor.Weather.Evaporation;
using Xunit;

namespace WitherAdvisor.Tests.Weather.Evaporation;

/// <summary>Examples of FAO-56 (Allen et al. 1998), each to half of its last printed digit.</summary>
public sealed class FaoAirTests
{
    [Fact]
    public void Pressure_and_psychrometric_constant_at_1800_m_are_those_of_example_2()
    {
        double pressureKPa = FaoAir.PressureKPa(1800);

        Assert.Equal(81.8, pressureKPa, 0.05);
        Assert.Equal(0.054, FaoAir.PsychrometricConstantKPaPerK(pressureKPa), 0.0005);
    }

    [Theory]
    [InlineData(24.5, 3.075, 0.0005)]
    [InlineData(15.0, 1.705, 0.0005)]
    [InlineData(19.75, 2.30, 0.005)]
    public void Saturation_vapour_pressure_is_that_of_example_3(double temperatureC, double printedKPa, double half) =>
        Assert.Equal(printedKPa, FaoAir.SaturationKPa(temperatureC), half);

    [Fact]
    public void Vapour_pressure_by_aspirated_psychrometer_is_that_of_example_4()
    {
        double pressureKPa = FaoAir.PressureKPa(1200);

        Assert.Equal(87.9, pressureKPa, 0.05);
        Assert.Equal(1.91, FaoAir.VapourPressureFromPsychrometerKPa(25.6, 19.5, pressureKPa), 0.005);
    }

    [Fact]
    public void Vapour_pressure_of_a_day_by_its_extremes_is_that_of_example_5() =>
        Assert.Equal(1.70, FaoAir.VapourPressureOfDayKPa(18, 25, 0.82, 0.54), 0.005);

    [Fact]
    public void Vapour_pressure_deficit_of_a_day_is_that_of_example_6()
    {
        double saturation = (FaoAir.SaturationKPa(18) + FaoAir.SaturationKPa(25)) / 2;

        Assert.Equal(0.91, saturation - FaoAir.VapourPressureOfDayKPa(18, 25, 0.82, 0.54), 0.005);
    }

    [Fact]
    public void Wind_at_2_m_is_that_of_example_14() => Assert.Equal(2.4, FaoAir.WindAtTwoMetres(3.2, 10), 0.05);
}

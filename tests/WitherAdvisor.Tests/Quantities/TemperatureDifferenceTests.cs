using WitherAdvisor.Quantities;
using Xunit;

namespace WitherAdvisor.Tests.Quantities;

public sealed class TemperatureDifferenceTests
{
    // NIST SP 811 (2008), appendix B.9: an interval of 1 K is one of 1.8 °F.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(10, 18)]
    [InlineData(-2.5, -4.5)]
    public void A_difference_ignores_the_zero_of_the_scale(double kelvin, double fahrenheitDegrees)
    {
        Assert.Equal(fahrenheitDegrees, TemperatureDifference.FromKelvin(kelvin).FahrenheitDegrees);
        Assert.Equal(kelvin, TemperatureDifference.FromFahrenheitDegrees(fahrenheitDegrees).Kelvin);
    }

    [Fact]
    public void A_difference_is_finite() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TemperatureDifference.FromKelvin(double.NaN));
}

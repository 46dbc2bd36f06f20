using WitherAdvisor.Quantities;
using Xunit;

namespace WitherAdvisor.Tests.Quantities;

public sealed class TemperatureTests
{
    // NIST SP 811 (2008), appendix B.9: t/°C = (t/°F − 32)/1.8; the fixed points are those of the two scales.
    [Theory]
    [InlineData(-40, -40)]
    [InlineData(0, 32)]
    [InlineData(25, 77)]
    [InlineData(35, 95)]
    [InlineData(100, 212)]
    public void The_fixed_points_of_the_two_scales_convert_exactly_both_ways(double celsius, double fahrenheit)
    {
        Assert.Equal(fahrenheit, Temperature.FromCelsius(celsius).Fahrenheit);
        Assert.Equal(celsius, Temperature.FromFahrenheit(fahrenheit).Celsius);
    }

    [Fact]
    public void Every_tenth_of_a_degree_comes_back_as_it_was_typed()
    {
        for (int tenths = -400; tenths <= 2000; tenths++)
        {
            double typed = tenths / 10.0;
            Assert.Equal(typed, Math.Round(Temperature.FromFahrenheit(typed).Fahrenheit, 9));
            Assert.Equal(typed, Math.Round(Temperature.FromFahrenheit(Temperature.FromCelsius(typed).Fahrenheit).Celsius, 9));
        }
    }

    [Theory]
    [InlineData(-273.16)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void No_temperature_is_below_absolute_zero_or_endless(double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromCelsius(celsius));

    [Fact]
    public void Two_temperatures_differ_by_a_difference_that_leads_back()
    {
        Temperature dry = Temperature.FromCelsius(27);
        Temperature wet = Temperature.FromCelsius(20);

        TemperatureDifference difference = dry.Minus(wet);

        Assert.Equal(7, difference.Kelvin);
        Assert.Equal(dry, wet.Plus(difference));
    }

    [Fact]
    public void Absolute_zero_is_a_temperature() => Assert.Equal(-273.15, Temperature.FromCelsius(-273.15).Celsius);
}

using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Tests.Units;

public sealed class PersonUnitsTests
{
    private static readonly PersonUnits Imperial = new(TemperatureScale.Fahrenheit, WeightUnit.Pound);

    // NIST SP 811 (2008), appendix B: 26.5 °C = 79.7 °F; a difference of 7.2 K is 12.96 °F; 1 lb = 0.453 592 37 kg;
    // 1 lb/ft² = 4.882 428 kg/m².
    [Fact]
    public void Quantities_come_out_in_the_units_that_were_chosen()
    {
        Assert.Equal("26.5 °C", PersonUnits.Usual.TemperatureText(26.5));
        Assert.Equal("79.7 °F", Imperial.TemperatureText(26.5));
        Assert.Equal("7.2 °C", PersonUnits.Usual.DifferenceText(7.2));
        Assert.Equal("13.0 °F", Imperial.DifferenceText(7.2));
        Assert.Equal("1176 kg", PersonUnits.Usual.WeightText(1176));
        Assert.Equal("2593 lb", Imperial.WeightText(1176));
        Assert.Equal("28.0 kg/m²", PersonUnits.Usual.LoadText(28));
        Assert.Equal("5.7 lb/ft²", Imperial.LoadText(28));
    }

    [Theory]
    [InlineData(TemperatureScale.Celsius, WeightUnit.Kilogram)]
    [InlineData(TemperatureScale.Fahrenheit, WeightUnit.Kilogram)]
    [InlineData(TemperatureScale.Celsius, WeightUnit.Pound)]
    [InlineData(TemperatureScale.Fahrenheit, WeightUnit.Pound)]
    public void What_is_typed_comes_back_as_it_was_typed(TemperatureScale scale, WeightUnit weight)
    {
        PersonUnits units = new(scale, weight);
        for (int tenths = 1; tenths < 3000; tenths++)
        {
            double typed = tenths / 10.0;
            Assert.Equal(typed, Math.Round(units.Degrees(units.Celsius(typed)), 9));
            Assert.Equal(typed, Math.Round(units.WeightFromKg(units.Kilograms(typed)), 9));
        }
    }

    [Theory]
    [InlineData(-0.04, "0.0")]
    [InlineData(-1.26, "−1.3")]
    [InlineData(12.34, "12.3")]
    public void A_number_has_a_true_minus_and_no_minus_nought(double value, string text) =>
        Assert.Equal(text, Figures.Fixed(value, 1));
}

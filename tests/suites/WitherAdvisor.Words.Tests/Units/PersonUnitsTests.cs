using FsCheck.Xunit;
using WitherAdvisor.Words.Units;
using Xunit;

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

    // NIST SP 811 (2008), appendix B.9: t/°C = (t/°F − 32)/1.8; the fixed points are those of the two scales.
    [Theory]
    [InlineData(-40, -40)]
    [InlineData(0, 32)]
    [InlineData(25, 77)]
    [InlineData(35, 95)]
    [InlineData(100, 212)]
    public void The_fixed_points_of_the_two_scales_convert_exactly_both_ways(double celsius, double fahrenheit)
    {
        Assert.Equal(fahrenheit, Imperial.Degrees(celsius));
        Assert.Equal(celsius, Imperial.Celsius(fahrenheit));
    }

    // An interval of 1 K is one of 1.8 °F.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(10, 18)]
    [InlineData(-2.5, -4.5)]
    public void A_difference_ignores_the_zero_of_the_scale(double kelvin, double fahrenheitDegrees)
    {
        Assert.Equal(fahrenheitDegrees, Imperial.DegreesApart(kelvin));
        Assert.Equal(kelvin, PersonUnits.Usual.DegreesApart(kelvin));
    }

    // 1 lb = 0.453 592 37 kg, exactly; 1 ton of 2 240 lb = 1 016.046 908 8 kg.
    [Theory]
    [InlineData(1, 0.45359237)]
    [InlineData(100, 45.359237)]
    [InlineData(2240, 1016.0469088)]
    public void A_pound_is_what_the_agreement_says(double pounds, double kilograms)
    {
        Assert.Equal(kilograms, Imperial.Kilograms(pounds), 12);
        Assert.Equal(pounds, Imperial.WeightFromKg(kilograms), 9);
    }

    [Fact]
    public void Every_tenth_comes_back_as_it_was_typed_from_either_side()
    {
        for (int tenths = -400; tenths <= 2000; tenths++)
        {
            double typed = tenths / 10.0;
            Assert.Equal(typed, Math.Round(Imperial.Degrees(Imperial.Celsius(typed)), 9));
            Assert.Equal(typed, Math.Round(Imperial.Celsius(Imperial.Degrees(typed)), 9));
        }

        for (int tenths = 0; tenths <= 100_000; tenths += 7)
        {
            double typed = tenths / 10.0;
            Assert.Equal(typed, Math.Round(Imperial.WeightFromKg(Imperial.Kilograms(typed)), 9));
        }
    }

    /// <summary>A value typed in one unit comes back as it was typed, however often the unit is toggled.</summary>
    [Property(MaxTest = 10_000)]
    public void What_is_typed_survives_any_number_of_toggles(int hundredths)
    {
        double typed = hundredths % 40_000 / 100.0;
        double degrees = typed;
        double weight = Math.Abs(typed);
        for (int i = 0; i < 10; i++)
        {
            degrees = Imperial.Degrees(Imperial.Celsius(degrees));
            weight = Imperial.WeightFromKg(Imperial.Kilograms(weight));
        }

        Assert.Equal(typed, Math.Round(degrees, 9));
        Assert.Equal(Math.Abs(typed), Math.Round(weight, 9));
    }

    [Property(MaxTest = 10_000)]
    public void A_difference_of_two_temperatures_is_the_same_in_both_units(int one, int other)
    {
        double oneF = one % 40_000 / 100.0;
        double otherF = other % 40_000 / 100.0;

        Assert.Equal(oneF - otherF, Imperial.DegreesApart(Imperial.Celsius(oneF) - Imperial.Celsius(otherF)), 1e-9);
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

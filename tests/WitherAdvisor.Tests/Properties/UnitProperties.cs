using FsCheck.Xunit;
using WitherAdvisor.Quantities;
using Xunit;

namespace WitherAdvisor.Tests.Properties;

/// <summary>A value typed in one unit comes back as it was typed, however often the unit is toggled.</summary>
[Properties(MaxTest = 10_000)]
public sealed class UnitProperties
{
    private const int Toggles = 10;
    private const int DigitsShown = 9;

    [Property]
    public void A_temperature_survives_any_number_of_toggles(int hundredths)
    {
        double typed = Typed(hundredths);
        double fahrenheit = typed;
        for (int i = 0; i < Toggles; i++)
        {
            fahrenheit = Temperature.FromCelsius(Temperature.FromFahrenheit(fahrenheit).Celsius).Fahrenheit;
        }

        Assert.Equal(typed, Math.Round(fahrenheit, DigitsShown));
    }

    [Property]
    public void A_difference_survives_any_number_of_toggles(int hundredths)
    {
        double typed = Typed(hundredths);
        double degrees = typed;
        for (int i = 0; i < Toggles; i++)
        {
            degrees = TemperatureDifference.FromKelvin(TemperatureDifference.FromFahrenheitDegrees(degrees).Kelvin).FahrenheitDegrees;
        }

        Assert.Equal(typed, Math.Round(degrees, DigitsShown));
    }

    [Property]
    public void A_mass_survives_any_number_of_toggles(int hundredths)
    {
        double typed = Math.Abs(Typed(hundredths));
        double pounds = typed;
        for (int i = 0; i < Toggles; i++)
        {
            pounds = Mass.FromKilograms(Mass.FromPounds(pounds).Kilograms).Pounds;
        }

        Assert.Equal(typed, Math.Round(pounds, DigitsShown));
    }

    [Property]
    public void A_difference_of_two_temperatures_is_the_same_in_both_units(int one, int other)
    {
        TemperatureDifference between = Temperature.FromFahrenheit(Typed(one)).Minus(Temperature.FromFahrenheit(Typed(other)));

        Assert.Equal(Typed(one) - Typed(other), between.FahrenheitDegrees, 1e-9);
    }

    /// <summary>Two decimals, from −400 to 400.</summary>
    private static double Typed(int hundredths) => hundredths % 40_000 / 100.0;
}

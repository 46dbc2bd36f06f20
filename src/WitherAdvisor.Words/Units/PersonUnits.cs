namespace WitherAdvisor.Words.Units;

/// <summary>Quantities of the model in the units that a person chose: in words, and back from what they typed.</summary>
/// <remarks>
/// The one place where °F and lb are reckoned. A difference is converted apart from a temperature because the Fahrenheit
/// zero does not enter: a difference of 10 K is 18 °F, a temperature of 10 °C is 50 °F (BIPM, The International System of
/// Units, and NIST SP 811, appendix B.9).
/// </remarks>
public sealed record PersonUnits(TemperatureScale Scale, WeightUnit Weight)
{
    /// <summary>Exact by definition (international yard and pound agreement, 1959; NIST SP 811, appendix B.9).</summary>
    private const double KilogramsPerPound = 0.45359237;

    private const double FahrenheitDegreesAtZeroC = 32;

    private const double SquareMetresPerSquareFoot = 0.3048 * 0.3048;

    public static PersonUnits Usual { get; } = new(TemperatureScale.Celsius, WeightUnit.Kilogram);

    public string DegreeSymbol => Scale == TemperatureScale.Celsius ? "°C" : "°F";

    public string WeightSymbol => Weight == WeightUnit.Kilogram ? "kg" : "lb";

    public string LoadSymbol => Weight == WeightUnit.Kilogram ? "kg/m²" : "lb/ft²";

    /// <summary>From a model's °C to the person's scale.</summary>
    public double Degrees(double celsius) => Scale == TemperatureScale.Celsius
        ? celsius
        : celsius * 9 / 5 + FahrenheitDegreesAtZeroC;

    /// <summary>From what a person typed to °C.</summary>
    public double Celsius(double degrees) => Scale == TemperatureScale.Celsius
        ? degrees
        : (degrees - FahrenheitDegreesAtZeroC) * 5 / 9;

    /// <summary>From a difference in K to one on the person's scale.</summary>
    public double DegreesApart(double kelvin) => Scale == TemperatureScale.Celsius
        ? kelvin
        : kelvin * 9 / 5;

    /// <summary>From kg to the person's unit.</summary>
    public double WeightFromKg(double kilograms) => Weight == WeightUnit.Kilogram
        ? kilograms
        : kilograms / KilogramsPerPound;

    /// <summary>From what a person typed to kg.</summary>
    public double Kilograms(double weight) => Weight == WeightUnit.Kilogram
        ? weight
        : weight * KilogramsPerPound;

    /// <summary>"26.5 °C".</summary>
    public string TemperatureText(double celsius) => $"{Figures.Fixed(Degrees(celsius), 1)} {DegreeSymbol}";

    /// <summary>A difference, "7.2 °C" or "13.0 °F".</summary>
    public string DifferenceText(double kelvin) => $"{Figures.Fixed(DegreesApart(kelvin), 1)} {DegreeSymbol}";

    /// <summary>"812 kg"; a tenth more where the weight is small.</summary>
    public string WeightText(double kilograms)
    {
        double weight = WeightFromKg(kilograms);
        return $"{Figures.Fixed(weight, weight < 100 ? 1 : 0)} {WeightSymbol}";
    }

    /// <summary>"28.0 kg/m²" or "5.7 lb/ft²".</summary>
    public string LoadText(double kilogramsPerM2) => Weight == WeightUnit.Kilogram
        ? $"{Figures.Fixed(kilogramsPerM2, 1)} {LoadSymbol}"
        : $"{Figures.Fixed(WeightFromKg(kilogramsPerM2) * SquareMetresPerSquareFoot, 1)} {LoadSymbol}";
}

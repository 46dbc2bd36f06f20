namespace WitherAdvisor.Quantities;

/// <summary>A temperature on a scale, not below absolute zero. A difference of two is a <see cref="TemperatureDifference"/>.</summary>
/// <remarks>
/// Kept in °C, the scale that the model works in. Fahrenheit by its definition, 1.8 °F for 1 °C and 32 °F at
/// 0 °C (BIPM, The International System of Units, and NIST SP 811, appendix B.9).
/// </remarks>
public readonly record struct Temperature
{
    public const double AbsoluteZeroC = -273.15;

    private Temperature(double celsius)
    {
        if (!double.IsFinite(celsius) || celsius < AbsoluteZeroC)
        {
            throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "A temperature is finite and not below −273.15 °C.");
        }

        Celsius = celsius;
    }

    public double Celsius { get; }

    public double Fahrenheit => Celsius * 9 / 5 + 32;

    public static Temperature FromCelsius(double celsius) => new(celsius);

    public static Temperature FromFahrenheit(double fahrenheit) => new((fahrenheit - 32) * 5 / 9);

    public Temperature Plus(TemperatureDifference difference) => new(Celsius + difference.Kelvin);

    public TemperatureDifference Minus(Temperature other) => TemperatureDifference.FromKelvin(Celsius - other.Celsius);
}

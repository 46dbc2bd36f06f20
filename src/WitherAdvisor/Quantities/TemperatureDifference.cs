namespace WitherAdvisor.Quantities;

/// <summary>
/// How far two temperatures are apart, for example a hygrometric difference. A type of its own because the
/// Fahrenheit zero does not enter: a difference of 10 K is 18 °F, a temperature of 10 °C is 50 °F.
/// </summary>
public readonly record struct TemperatureDifference
{
    private TemperatureDifference(double kelvin)
    {
        if (!double.IsFinite(kelvin))
        {
            throw new ArgumentOutOfRangeException(nameof(kelvin), kelvin, "A temperature difference is finite.");
        }

        Kelvin = kelvin;
    }

    /// <summary>K, the same as a difference in °C.</summary>
    public double Kelvin { get; }

    public double FahrenheitDegrees => Kelvin * 9 / 5;

    public static TemperatureDifference FromKelvin(double kelvin) => new(kelvin);

    public static TemperatureDifference FromFahrenheitDegrees(double degrees) => new(degrees * 5 / 9);
}

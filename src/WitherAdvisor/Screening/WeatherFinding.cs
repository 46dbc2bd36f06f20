using WitherAdvisor.Readings;

namespace WitherAdvisor.Screening;

/// <summary>A fault found in weather, and the readings that are not believed for it.</summary>
/// <param name="Fault">What was found.</param>
/// <param name="From">Time of the first reading that is doubted.</param>
/// <param name="To">Time of the last.</param>
/// <param name="IsDoubted">Which of the readings between those are doubted.</param>
/// <param name="Without">A reading without what is doubted of it; the reading itself where all of it is kept.</param>
internal sealed record WeatherFinding(
    Assumption Fault,
    DateTimeOffset From,
    DateTimeOffset To,
    Func<WeatherReading, bool> IsDoubted,
    Func<WeatherReading, WeatherReading> Without)
{
    public static WeatherReading WithoutRain(WeatherReading reading) => reading with { RainMm = null, RainMinutes = null, RainMinutesFrom = null };

    public static WeatherReading WithoutHumidity(WeatherReading reading) =>
        reading with { DewPointC = null, WetBulbC = null, RelativeHumidity = null, Instrument = null };

    /// <summary>A relative humidity or a wet bulb tells nothing without its dry bulb.</summary>
    public static WeatherReading WithoutDryBulb(WeatherReading reading) =>
        reading with { DryBulbC = null, WetBulbC = null, RelativeHumidity = null, Instrument = null };

    public static WeatherReading WithoutWind(WeatherReading reading) => reading with { WindMPerS = null };

    public static WeatherReading WithoutPressure(WeatherReading reading) => reading with { StationPressurePa = null };

    /// <summary>What is left of a reading.</summary>
    public WeatherReading Of(WeatherReading reading) =>
        reading.Time >= From && reading.Time <= To && IsDoubted(reading) ? Without(reading) : reading;
}

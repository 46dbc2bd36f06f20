using WitherAdvisor.Advice;
using WitherAdvisor.InventedEstate;
using WitherAdvisor.Readings;

namespace WitherAdvisor.SyntheticSeasons;

/// <summary>A part of the weather that nobody tells the service.</summary>
/// <param name="Name">As the tables say.</param>
/// <param name="Of">A reading without it; the number is the day's.</param>
public sealed record Withheld(string Name, Func<WeatherReading, double, WeatherReading> Of)
{
    private const double HalfOfDays = 0.5;

    public static Withheld Nothing { get; } = new("nothing", (reading, _) => reading);

    public static Withheld Sun { get; } = new("sun", (reading, _) => reading with { ShortwaveWPerM2 = null });

    public static Withheld Wind { get; } = new("wind", (reading, _) => reading with { WindMPerS = null });

    public static Withheld SunAndWind { get; } = new("sun and wind", (reading, _) => reading with { ShortwaveWPerM2 = null, WindMPerS = null });

    /// <summary>Rain of every other day, by chance.</summary>
    public static Withheld HalfOfRain { get; } = new("half the rain", (reading, drawn) => drawn < HalfOfDays ? reading with { RainMm = null } : reading);

    /// <summary>A request without it, what was read and what is forecast alike.</summary>
    /// <param name="number">Of the batch.</param>
    public AdviceRequest From(AdviceRequest request, ulong number)
    {
        WeatherReading Without(WeatherReading reading) => Of(reading, DrawnOfDay(reading, number));
        return request with { Readings = [.. request.Readings.Select(Without)], Forecast = [.. request.Forecast.Select(Without)] };
    }

    private static double DrawnOfDay(WeatherReading reading, ulong number) =>
        new SplitMix64(number * 7919 + (ulong)(reading.Time.UtcTicks / TimeSpan.TicksPerDay)).NextFraction();
}

using WitherAdvisor.Readings;

namespace WitherAdvisor.Loft.Advising;

/// <summary>The air of the night: what was forecast and, since it is air of the night too, what was read after loading.</summary>
public static class AirAhead
{
    /// <summary>By time; what was read stands last of one time, and wins.</summary>
    public static IReadOnlyList<WeatherReading> Of(
        IEnumerable<WeatherReading> read, IEnumerable<WeatherReading> forecast, DateTimeOffset loadedAt) =>
        [.. forecast.Concat(read.Where(reading => reading.Time > loadedAt)).OrderBy(reading => reading.Time)];
}

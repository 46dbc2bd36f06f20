using WitherAdvisor.Weather;

namespace WitherAdvisor.Store;

/// <summary>
/// Readings by site. A reading saved later for the same kind and time replaces the earlier, value by value where it is known;
/// the three humidities are one value. Times come back as the same instants to the millisecond, with offset zero.
/// </summary>
public interface IWeatherStore
{
    /// <summary>Keeps all readings or none; answers how many were new.</summary>
    /// <exception cref="UnknownOwnerException">No such site.</exception>
    Task<int> SaveReadings(
        string siteId, WeatherKind kind, IReadOnlyList<WeatherReading> readings, DateTimeOffset savedAt,
        CancellationToken cancel = default);

    /// <summary>Readings with <paramref name="from"/> ≤ time ≤ <paramref name="to"/>, by time.</summary>
    Task<IReadOnlyList<WeatherReading>> ReadReadings(
        string siteId, WeatherKind kind, DateTimeOffset from, DateTimeOffset to, CancellationToken cancel = default);

    /// <summary>Keeps all totals or none; one for the same stretch replaces the earlier.</summary>
    /// <exception cref="UnknownOwnerException">No such site.</exception>
    Task SaveRainTotals(
        string siteId, IReadOnlyList<RainTotal> totals, DateTimeOffset savedAt, CancellationToken cancel = default);

    /// <summary>Totals whose stretch touches the one asked for, by start.</summary>
    Task<IReadOnlyList<RainTotal>> ReadRainTotals(
        string siteId, DateTimeOffset from, DateTimeOffset to, CancellationToken cancel = default);
}

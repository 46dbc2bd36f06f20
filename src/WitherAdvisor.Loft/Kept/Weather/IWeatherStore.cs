using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Loft.Kept.Weather;

/// <summary>
/// Readings by site and source; what one source says never touches another's, nor one feed's another feed's.
/// Times come back as the same instants to the millisecond, with offset zero.
/// </summary>
public interface IWeatherStore
{
    /// <summary>
    /// Keeps what people and callers say: all readings or none; answers how many were new. A reading saved later for the
    /// same source and time replaces the earlier, value by value where it is known; the three humidities are one value.
    /// </summary>
    /// <param name="source">Not a feed's.</param>
    /// <exception cref="ParentNotFoundException">No such site.</exception>
    Task<int> SaveReadings(
        string siteId, WeatherSource source, IReadOnlyList<WeatherReading> readings, DateTimeOffset savedAt,
        CancellationToken cancel = default);

    /// <summary>
    /// Keeps one answer of a feed: all of it or nothing. Each reading replaces the feed's older one of that time whole, so
    /// that a row is one answer's; of an hour that the answer tells nothing of the older stays. An answer older than
    /// what is kept changes nothing.
    /// </summary>
    /// <param name="feed">As the operator named it.</param>
    /// <exception cref="ParentNotFoundException">No such site.</exception>
    Task SaveFromFeed(
        string siteId, string feed, IReadOnlyList<WeatherReading> analysed, IReadOnlyList<WeatherReading> forecast,
        DateTimeOffset fetchedAt, CancellationToken cancel = default);

    /// <summary>
    /// Drops all that feeds said of a site, and that they were ever asked: for a site that turned out to stand elsewhere
    /// it was the weather of another place.
    /// </summary>
    Task ForgetFeeds(string siteId, CancellationToken cancel = default);

    /// <summary>Readings of every source with <paramref name="from"/> ≤ time ≤ <paramref name="to"/>, by time, the best source first.</summary>
    Task<IReadOnlyList<SourcedReading>> ReadSourced(
        string siteId, DateTimeOffset from, DateTimeOffset to, CancellationToken cancel = default);

    /// <summary>Keeps all totals or none; one for the same stretch replaces the earlier.</summary>
    /// <exception cref="ParentNotFoundException">No such site.</exception>
    Task SaveRainTotals(
        string siteId, IReadOnlyList<RainTotal> totals, DateTimeOffset savedAt, CancellationToken cancel = default);

    /// <summary>Totals whose stretch touches the one asked for, by start.</summary>
    Task<IReadOnlyList<RainTotal>> ReadRainTotals(
        string siteId, DateTimeOffset from, DateTimeOffset to, CancellationToken cancel = default);
}

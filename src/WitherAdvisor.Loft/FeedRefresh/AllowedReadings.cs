using WitherAdvisor.Readings;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Loft.FeedRefresh;

/// <summary>
/// Holds a feed to the ranges that callers are held to, so that kept weather can always be sent inline again. What is
/// outside becomes unknown, and is said.
/// </summary>
public sealed class AllowedReadings
{
    private readonly Dictionary<ReadingRange, (int Hours, DateTimeOffset First)> outside = [];

    public AllowedReadings(IEnumerable<WeatherReading> readings) =>
        Readings = [.. readings.Select(Of).Where(reading => reading.TellsAnything)];

    /// <summary>In the order given; those of which nothing remains are absent.</summary>
    public IReadOnlyList<WeatherReading> Readings { get; }

    /// <summary>What was left out.</summary>
    public IEnumerable<FeedNote> Notes => ReadingRange.All
        .Where(outside.ContainsKey)
        .Select(range => Note(range, outside[range].Hours, outside[range].First));

    private static FeedNote.OutsideRange Note(ReadingRange range, int hours, DateTimeOffset first) =>
        new(range.Name, range.Least, range.Most, range.Unit, hours, first);

    private WeatherReading Of(WeatherReading reading)
    {
        WeatherReading allowed = reading;
        foreach (ReadingRange range in ReadingRange.All.Where(range => !range.Holds(reading)))
        {
            outside[range] = outside.TryGetValue(range, out var before)
                ? (before.Hours + 1, before.First)
                : (1, reading.Time.ToUniversalTime());
            allowed = range.Without(allowed);
        }

        return allowed;
    }
}

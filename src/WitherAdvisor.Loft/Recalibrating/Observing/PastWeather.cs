using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Loft.Recalibrating.Observing;

/// <summary>
/// What was observed or analysed at a site over all of its log, composed once; what was only forecast teaches nothing.
/// Read batch by batch the same hours would be composed a hundred times over.
/// </summary>
public sealed class PastWeather
{
    /// <summary>Soil water remembers months.</summary>
    private static readonly TimeSpan HistoryWanted = TimeSpan.FromDays(90);

    private readonly List<WeatherReading> readings;
    private readonly IReadOnlyList<RainTotal> totals;

    private PastWeather(List<WeatherReading> readings, IReadOnlyList<RainTotal> totals) => (this.readings, this.totals) = (readings, totals);

    /// <summary>Of withers loaded between two times.</summary>
    public static async Task<PastWeather> Read(
        IWeatherStore weather, string siteId, DateTimeOffset first, DateTimeOffset last, CancellationToken cancel)
    {
        IReadOnlyList<RainTotal> gauged = await weather.ReadRainTotals(siteId, first - HistoryWanted, last, cancel);
        IReadOnlyList<SourcedReading> rows = await weather.ReadSourced(siteId, first - HistoryWanted, last, cancel);
        ComposedWeather composed = WeatherComposition.Of(rows, gauged);
        return new([.. composed.Weather], composed.RainTotals);
    }

    /// <summary>Up to a loading.</summary>
    public (IReadOnlyList<WeatherReading> Readings, IReadOnlyList<RainTotal> Totals) Before(DateTimeOffset loadedAt)
    {
        DateTimeOffset from = loadedAt - HistoryWanted;
        int begin = FirstAtOrAfter(from.UtcTicks);
        int end = FirstAtOrAfter(loadedAt.UtcTicks + 1);
        return (readings.GetRange(begin, end - begin), [.. totals.Where(total => total.To > from && total.From < loadedAt)]);
    }

    private int FirstAtOrAfter(long ticks)
    {
        int low = 0;
        int high = readings.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = readings[middle].Time.UtcTicks < ticks ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}

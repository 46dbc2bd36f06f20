using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Coefficients;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Loft.Advising;

/// <summary>Gathers from the store what a caller without one would state inline.</summary>
public sealed class InputGathering(IWeatherStore weather, AdoptedCoefficients coefficients)
{
    /// <summary>Most readings that an advice is made of: as many as a caller may send, so that kept inputs can always be sent again.</summary>
    public const int MostReadings = 5000;

    /// <summary>Most hours of forecast, for the same reason.</summary>
    public const int MostForecast = 1000;

    /// <summary>Soil water remembers months.</summary>
    private static readonly TimeSpan HistoryWanted = TimeSpan.FromDays(90);

    /// <summary>Longer than any wither.</summary>
    private static readonly TimeSpan NightWanted = TimeSpan.FromHours(48);

    public async Task<AdviceInputs> For(StoredSite site, StoredTrough trough, StoredBatch batch, CancellationToken cancel)
    {
        Batch leaf = batch.Batch;
        DateTimeOffset from = leaf.LoadedAt - HistoryWanted;
        DateTimeOffset to = leaf.LoadedAt + NightWanted;
        DateTimeOffset come = leaf.LastCameAt;
        var totals = await weather.ReadRainTotals(site.Id, from, come, cancel);
        var composed = WeatherComposition.Of(await weather.ReadSourced(site.Id, from, to, cancel), totals);
        List<WeatherReading> read = [.. composed.Weather.TakeLast(MostReadings)];
        return new(site.Name, site.TimeZone, trough.Name, new(
            site.Site,
            trough.Trough,
            leaf,
            read.FindAll(reading => reading.Time <= come),
            composed.RainTotals,
            AirAhead.Of(read, composed.ForecastToCompare.TakeLast(MostForecast), come),
            await coefficients.For(site.Id, leaf.Label, cancel) ?? new WitherCoefficients()));
    }
}

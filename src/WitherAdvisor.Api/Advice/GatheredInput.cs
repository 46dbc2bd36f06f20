using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Store;
using WitherAdvisor.Weather;

namespace WitherAdvisor.Api.Advice;

/// <summary>Gathers from the store what a caller without one would state inline.</summary>
internal sealed class GatheredInput(IWeatherStore weather)
{
    /// <summary>Soil water remembers months.</summary>
    private static readonly TimeSpan HistoryWanted = TimeSpan.FromDays(90);

    /// <summary>Longer than any wither.</summary>
    private static readonly TimeSpan NightWanted = TimeSpan.FromHours(48);

    private const int MostReadings = Input.Shapes.LongestBody;

    public async Task<AdviceInput> For(
        StoredSite site, StoredTrough trough, StoredBatch batch, CancellationToken cancel)
    {
        DateTimeOffset loadedAt = batch.Batch.LoadedAt;
        DateTimeOffset from = loadedAt - HistoryWanted;
        DateTimeOffset to = loadedAt + NightWanted;
        var read = await weather.ReadReadings(site.Id, WeatherKind.Observed, from, to, cancel);
        var totals = await weather.ReadRainTotals(site.Id, from, loadedAt, cancel);
        var foretold = await weather.ReadReadings(site.Id, WeatherKind.Forecast, loadedAt, to, cancel);
        return new()
        {
            Site = SiteMapping.ToInput(site),
            Trough = TroughMapping.ToInput(trough),
            Batch = BatchMapping.ToInput(batch.Batch),
            Weather = Newest(read),
            RainTotals = [.. totals.Select(RainTotalInput.Of)],
            Forecast = [.. foretold.Select(ReadingMapping.ToInput)],
        };
    }

    /// <summary>Within what a caller may send inline, so that kept inputs can always be sent again.</summary>
    private static List<ReadingInput> Newest(IReadOnlyList<WeatherReading> readings) =>
        [.. readings.TakeLast(MostReadings).Select(ReadingMapping.ToInput)];
}

using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Coefficients;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Api.Advice;

/// <summary>Gathers from the store what a caller without one would state inline.</summary>
internal sealed class GatheredInput(IWeatherStore weather, AdoptedCoefficients adopted)
{
    /// <summary>Soil water remembers months.</summary>
    private static readonly TimeSpan HistoryWanted = TimeSpan.FromDays(90);

    /// <summary>Longer than any wither.</summary>
    private static readonly TimeSpan NightWanted = TimeSpan.FromHours(48);

    public async Task<AdviceInput> For(
        StoredSite site, StoredTrough trough, StoredBatch batch, CancellationToken cancel)
    {
        DateTimeOffset loadedAt = batch.Batch.LoadedAt;
        DateTimeOffset from = loadedAt - HistoryWanted;
        DateTimeOffset to = loadedAt + NightWanted;
        var totals = await weather.ReadRainTotals(site.Id, from, loadedAt, cancel);
        var composed = WeatherComposition.Of(await weather.ReadSourced(site.Id, from, to, cancel), totals);
        return new()
        {
            Site = SiteMapping.ToInput(site),
            Trough = TroughMapping.ToInput(trough),
            Batch = BatchMapping.ToInput(batch.Batch),
            Weather = Newest(composed.Weather, Shapes.LongestBody),
            RainTotals = [.. composed.RainTotals.Select(GaugedRainInput.Of)],
            Forecast = Newest(composed.ForecastToCompare, AdviceInput.MostForetold),
            Coefficients = await Adopted(site, batch, cancel),
        };
    }

    /// <summary>Written out in full, so that a replay does not ask what is adopted by then; null for the defaults.</summary>
    private async Task<CoefficientsInput?> Adopted(StoredSite site, StoredBatch batch, CancellationToken cancel) =>
        await adopted.For(site.Id, batch.Batch.Label, cancel) is { } set ? CoefficientsMapping.ToInput(set) : null;

    /// <summary>Within what a caller may send inline, so that kept inputs can always be sent again.</summary>
    private static List<ReadingInput> Newest(IReadOnlyList<WeatherReading> readings, int most) =>
        [.. readings.TakeLast(most).Select(ReadingMapping.ToInput)];
}

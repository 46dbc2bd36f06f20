using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Outcomes;

namespace WitherAdvisor.Loft.Recalibrating.Observing;

/// <summary>Reads what a recalibration of a site is made of.</summary>
public sealed class LogReading(ISiteStore sites, IBatchStore batches, IOutcomeStore outcomes, IWeatherStore weather)
{
    public async Task<LogWithWeather> Of(StoredSite site, CancellationToken cancel)
    {
        List<LoggedOutcome> lines = [];
        Dictionary<string, IReadOnlyList<AirHeld>> advised = new(StringComparer.Ordinal);
        await foreach (LoggedOutcome line in outcomes.Log(site.Id, new(), cancel))
        {
            lines.Add(line);
            if (!HasAir(line.Outcome.Outcome) && line.Advice is { } figures)
            {
                advised.Add(line.Batch.Id, AdvisedAir.Of(await batches.FindAdvice(figures.AdviceId, cancel), figures));
            }
        }

        DateTimeOffset first = lines.Count > 0 ? lines[0].Batch.Batch.LoadedAt : DateTimeOffset.UnixEpoch;
        DateTimeOffset last = lines.Count > 0 ? lines[^1].Batch.Batch.LoadedAt : first;
        return new(
            site,
            (await sites.ListTroughs(site.Id, cancel)).ToDictionary(trough => trough.Id, trough => trough.Trough, StringComparer.Ordinal),
            lines,
            advised,
            await PastWeather.Read(weather, site.Id, first, last, cancel));
    }

    private static bool HasAir(WitherOutcome outcome) =>
        outcome.AirMeasured.Concat(outcome.AirSet).Any(row => row.DryBulbC is not null && row.DifferenceK is not null);
}

using System.Text.Json;
using System.Text.Json.Nodes;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Intake;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Api.Demo;

/// <summary>Puts the invented estate into a new database, the way a user's own would come in.</summary>
internal sealed class InventedEstate(ISiteStore sites, IWeatherStore weather, BatchIntake intake)
{
    /// <summary>The batches taken in, oldest first; empty where the database already holds a site.</summary>
    public async Task<IReadOnlyList<IntakeResult.Taken>> LoadIntoNewDatabase(CancellationToken cancel)
    {
        if ((await sites.ListSites(cancel)).Count > 0)
        {
            return [];
        }

        JsonNode site = InventedFiles.Read("site.json");
        string siteId = site["id"]!.GetValue<string>();
        await sites.PutSite(SiteMapping.ToStored(siteId, InventedFiles.Request<SiteRequest>(site, "id")), cancel);
        foreach (JsonNode? trough in InventedFiles.Read("troughs.json").AsArray())
        {
            TroughRequest input = InventedFiles.Request<TroughRequest>(trough!, "id", "site");
            await sites.PutTrough(TroughMapping.ToStored(siteId, trough!["id"]!.GetValue<string>(), input), cancel);
        }

        List<IntakeResult.Taken> taken = [];
        foreach (JsonNode batch in InventedFiles.Read("batches.json").AsArray().OrderBy(LoadedAt)!)
        {
            taken.Add(await TakeIn(siteId, batch, cancel));
        }

        return taken;
    }

    private static DateTimeOffset LoadedAt(JsonNode? batch) => batch!["batch"]!["loaded_at"]!.GetValue<DateTimeOffset>();

    private async Task<IntakeResult.Taken> TakeIn(string siteId, JsonNode batch, CancellationToken cancel)
    {
        DateTimeOffset loadedAt = LoadedAt(batch);
        // What was read after loading is not for this batch to know.
        await Save(siteId, WeatherSource.Observed, Readings(batch, "readings").Where(reading => reading.Time <= loadedAt), loadedAt, cancel);
        await Save(siteId, WeatherSource.CallerForecast, Readings(batch, "forecast"), loadedAt, cancel);
        var totals = InventedFiles.Read(batch["rain_totals"]!.GetValue<string>()).Deserialize<List<RainTotalRequest>>(JsonRules.Request)!;
        await weather.SaveRainTotals(siteId, [.. totals.Select(total => total.ToDomain())], loadedAt, cancel);
        BatchOnTroughRequest input = InventedFiles.Request<BatchOnTroughRequest>(batch["batch"]!);
        return await intake.Take(siteId, input.Trough, BatchMapping.ToDomain(input), onceOnly: false, cancel) as IntakeResult.Taken
            ?? throw new InvalidDataException("A batch of the invented estate was not taken in.");
    }

    private static IReadOnlyList<ReadingRequest> Readings(JsonNode batch, string which) =>
        InventedFiles.Readings(batch[which]!.GetValue<string>());

    private async Task Save(
        string siteId, WeatherSource source, IEnumerable<ReadingRequest> readings, DateTimeOffset savedAt, CancellationToken cancel)
    {
        List<WeatherReading> domain = [.. readings.Select(ReadingMapping.ToDomain)];
        await weather.SaveReadings(siteId, source, domain, savedAt, cancel);
    }
}

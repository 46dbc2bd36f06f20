using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Loft;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Api.Weather;

/// <summary>Routes of weather.</summary>
internal static class WeatherEndpoints
{
    public static void MapWeather(this RouteGroupBuilder v1)
    {
        RouteGroupBuilder site = v1.MapGroup("/sites/{site}").WithTags("Weather");
        site.MapGet("weather", GetWeather);
        site.MapPost("weather", PostReadings);
        site.MapPost("rain-totals", PostRainTotals);
    }

    /// <summary>What callers gave of one kind over a stretch of time, and the best that all sources know of it with where each value is from, its holes and its age.</summary>
    private static async Task<Results<Ok<WeatherAnswer>, ProblemResult>> GetWeather(
        string site, Query<ReadingsQuery> query, ISiteStore sites, KeptWeather kept, TimeProvider clock, CancellationToken cancel) =>
        await sites.FindSite(site, cancel) is { } found
            ? TypedResults.Ok(await kept.Of(found, query.Value, clock.NowInMilliseconds(), cancel))
            : Problem.Unknown("site", site);

    /// <summary>Keeps readings sent as a JSON array or as CSV: all of them or, where one does not fit, none; of CSV the good rows alone, if the caller so chooses.</summary>
    private static async Task<Results<Ok<SavedReadingsAnswer>, ProblemResult>> PostReadings(
        string site, Query<NewReadingsQuery> query, ReadingsBody body,
        ISiteStore sites, IWeatherStore store, TimeProvider clock, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is null)
        {
            return Problem.Unknown("site", site);
        }

        CsvTable table = body.Value;
        bool goodRows = query.Value.Keep == KeptRows.GoodRows;
        List<WeatherReading> readings = [.. table.Good.Select(ReadingMapping.ToDomain)];
        int added = await store.SaveReadings(site, WeatherKinds.ToSource(query.Value.Kind), readings, clock.NowInMilliseconds(), cancel);
        return TypedResults.Ok(new SavedReadingsAnswer
        {
            Received = table.Good.Count + table.Refused.Count,
            New = added,
            Kept = goodRows ? table.Good.Count : null,
            Refused = goodRows ? table.Refused : null,
        });
    }

    /// <summary>Keeps rain read off a gauge for stretches of time: all of them or, where one does not fit, none.</summary>
    private static async Task<Results<Ok<SavedRainTotalsAnswer>, ProblemResult>> PostRainTotals(
        string site, Body<IReadOnlyList<RainTotalInput>> body,
        ISiteStore sites, IWeatherStore store, TimeProvider clock, CancellationToken cancel)
    {
        if (await sites.FindSite(site, cancel) is null)
        {
            return Problem.Unknown("site", site);
        }

        List<RainTotal> totals = [.. body.Value.Select(total => total.ToDomain())];
        await store.SaveRainTotals(site, totals, clock.NowInMilliseconds(), cancel);
        return TypedResults.Ok(new SavedRainTotalsAnswer { Received = totals.Count });
    }
}

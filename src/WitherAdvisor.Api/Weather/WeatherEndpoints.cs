using Microsoft.AspNetCore.Http.HttpResults;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Loft.Sites;
using WitherAdvisor.Loft.WeatherKeeping;
using WitherAdvisor.Loft.WeatherReviewing;
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

    /// <summary>Readings of one kind that callers gave for a period, and the best value from all sources with its origin, gaps and age.</summary>
    private static async Task<Results<Ok<WeatherResponse>, ProblemResult>> GetWeather(
        string site, Query<ReadingsQuery> query, ISiteStore sites, KeptWeather kept, TimeProvider clock, CancellationToken cancel) =>
        await sites.FindSite(site, cancel) is { } found
            ? TypedResults.Ok(WeatherMapping.ToResponse(
                await kept.Of(found, query.Value.From, query.Value.To, clock.NowInMilliseconds(), cancel), query.Value.Kind, new SiteClock(found.TimeZone)))
            : Problem.Unknown("site", site);

    /// <summary>Keeps readings sent as a JSON array or as CSV: all of them or, where one has an error, none; of CSV, if the caller so chooses, only the good rows.</summary>
    private static async Task<Results<Ok<SavedReadingsResponse>, ProblemResult>> PostReadings(
        string site, Query<NewReadingsQuery> query, ReadingsBody body,
        WeatherEntry keeping, CancellationToken cancel)
    {
        CsvTable table = body.Value;
        bool goodRows = query.Value.Keep == KeptRows.GoodRows;
        List<WeatherReading> readings = [.. table.Good.Select(ReadingMapping.ToDomain)];
        if (await keeping.Keep(site, WeatherKinds.ToSource(query.Value.Kind), readings, cancel) is not { } added)
        {
            return Problem.Unknown("site", site);
        }

        return TypedResults.Ok(new SavedReadingsResponse
        {
            Received = table.Good.Count + table.Refused.Count,
            New = added,
            Kept = goodRows ? table.Good.Count : null,
            Refused = goodRows ? table.Refused : null,
        });
    }

    /// <summary>Keeps rain read off a gauge over periods of time: all of it or, where one entry has an error, none.</summary>
    private static async Task<Results<Ok<SavedRainTotalsResponse>, ProblemResult>> PostRainTotals(
        string site, Body<IReadOnlyList<RainTotalRequest>> body,
        WeatherEntry keeping, TimeProvider clock, CancellationToken cancel)
    {
        List<FieldError> ahead =
        [
            .. body.Value.Select((total, at) =>
                ObservedTimes.Check(FieldPath.Join(FieldPath.Item("", at), "to"), total.To, ObservedTimes.Latest(clock))).OfType<FieldError>(),
        ];
        if (ahead.Count > 0)
        {
            return Problem.InvalidInput(ahead);
        }

        List<RainTotal> totals = [.. body.Value.Select(total => total.ToDomain())];
        return await keeping.Keep(site, totals, cancel)
            ? TypedResults.Ok(new SavedRainTotalsResponse { Received = totals.Count })
            : Problem.Unknown("site", site);
    }
}

using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings;
using WitherAdvisor.Readings.Sources;

namespace WitherAdvisor.Loft.WeatherKeeping;

/// <summary>Keeps weather that people and systems of a site give.</summary>
public sealed class WeatherEntry(ISiteStore sites, IWeatherStore weather, TimeProvider clock)
{
    /// <summary>Keeps readings, all or none.</summary>
    /// <returns>How many were new; null where there is no such site.</returns>
    public async Task<int?> Keep(string siteId, WeatherSource source, IReadOnlyList<WeatherReading> readings, CancellationToken cancel) =>
        await sites.FindSite(siteId, cancel) is null ? null : await weather.SaveReadings(siteId, source, readings, clock.NowInMilliseconds(), cancel);

    /// <summary>Keeps rain read off a gauge, all or none. False where there is no such site.</summary>
    public async Task<bool> Keep(string siteId, IReadOnlyList<RainTotal> totals, CancellationToken cancel)
    {
        if (await sites.FindSite(siteId, cancel) is null)
        {
            return false;
        }

        await weather.SaveRainTotals(siteId, totals, clock.NowInMilliseconds(), cancel);
        return true;
    }
}

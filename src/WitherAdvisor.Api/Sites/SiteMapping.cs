using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Api.Sites;

/// <summary>A site between request, domain and store.</summary>
internal static class SiteMapping
{
    public static Site ToDomain(SiteRequest input) => new(
        input.ElevationM, input.LatitudeDeg, input.LongitudeDeg,
        input.HotAirC ?? Site.UsualHotAirC,
        StyleMapping.ToDomain(input.Style),
        input.StationPressureHpa * Pressure.PascalPerHectopascal)
    {
        Heat = new() { LoftKW = input.LoftHeaterKw },
    };

    public static StoredSite ToStored(string id, SiteRequest input, string? feed = null) =>
        new(id, input.Name, input.TimeZone, ToDomain(input), feed);

    public static SiteResponse ToResponse(StoredSite stored) => new(stored.Id, ToRequest(stored), stored.Feed);

    public static SiteRequest ToRequest(StoredSite stored) => ToRequest(stored.Name, stored.TimeZone, stored.Site);

    /// <summary>As a caller would state it inline, with every setting stated.</summary>
    public static SiteRequest ToRequest(string name, string timeZone, Site site) => new()
    {
        Name = name,
        ElevationM = site.ElevationM,
        LatitudeDeg = site.LatitudeDeg,
        LongitudeDeg = site.LongitudeDeg,
        TimeZone = timeZone,
        StationPressureHpa = site.StationPressurePa / Pressure.PascalPerHectopascal,
        HotAirC = site.HotAirC,
        LoftHeaterKw = site.Heat.LoftKW,
        Style = StyleMapping.ToRequest(site.Style),
    };
}

using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Sites;

namespace WitherAdvisor.Api.Sites;

/// <summary>A site between request, domain and store.</summary>
internal static class SiteMapping
{
    public static Site ToDomain(SiteInput input) => new(
        input.ElevationM, input.LatitudeDeg, input.LongitudeDeg,
        input.HotAirC ?? Site.UsualHotAirC,
        StyleMapping.ToDomain(input.Style),
        input.StationPressureHpa * Pressure.PascalPerHectopascal);

    public static StoredSite ToStored(string id, SiteInput input, string? feed = null) =>
        new(id, input.Name, input.TimeZone, ToDomain(input), feed);

    public static SiteAnswer ToAnswer(StoredSite stored) => new(stored.Id, ToInput(stored), stored.Feed);

    public static SiteInput ToInput(StoredSite stored) => ToInput(stored.Name, stored.TimeZone, stored.Site);

    /// <summary>As a caller would state it inline, with every setting stated.</summary>
    public static SiteInput ToInput(string name, string timeZone, Site site) => new()
    {
        Name = name,
        ElevationM = site.ElevationM,
        LatitudeDeg = site.LatitudeDeg,
        LongitudeDeg = site.LongitudeDeg,
        TimeZone = timeZone,
        StationPressureHpa = site.StationPressurePa / Pressure.PascalPerHectopascal,
        HotAirC = site.HotAirC,
        Style = StyleMapping.ToInput(site.Style),
    };
}

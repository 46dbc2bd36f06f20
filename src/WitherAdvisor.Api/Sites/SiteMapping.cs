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

    /// <summary>As a caller would state it inline, with every setting stated.</summary>
    public static SiteInput ToInput(StoredSite stored) => new()
    {
        Name = stored.Name,
        ElevationM = stored.Site.ElevationM,
        LatitudeDeg = stored.Site.LatitudeDeg,
        LongitudeDeg = stored.Site.LongitudeDeg,
        TimeZone = stored.TimeZone,
        StationPressureHpa = stored.Site.StationPressurePa / Pressure.PascalPerHectopascal,
        HotAirC = stored.Site.HotAirC,
        Style = StyleMapping.ToInput(stored.Site.Style),
    };
}

using WitherAdvisor.Sites;

namespace WitherAdvisor.Loft.Kept.Sites;

/// <summary>A site as kept.</summary>
/// <param name="Id">Short name chosen by the caller, [a-z0-9-], at most 40 characters.</param>
/// <param name="Name">For people.</param>
/// <param name="TimeZone">IANA zone, for display.</param>
/// <param name="Site">What the advice needs of it.</param>
/// <param name="Feed">Name of the feed that its weather is fetched from, as the operator named it; null where none is.</param>
public sealed record StoredSite(string Id, string Name, string TimeZone, Site Site, string? Feed = null)
{
    /// <summary>Whether weather fetched for the one is weather of the other.</summary>
    public bool IsWhere(StoredSite other) =>
        (Site.LatitudeDeg, Site.LongitudeDeg, Site.ElevationM)
        == (other.Site.LatitudeDeg, other.Site.LongitudeDeg, other.Site.ElevationM);
}

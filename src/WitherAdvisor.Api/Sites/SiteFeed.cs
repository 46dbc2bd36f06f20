using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Api.Sites;

/// <summary>Which feed a site may name, and what a change of the site means for the weather that came by it.</summary>
internal static class SiteFeed
{
    /// <summary>Null where the feed is one that the operator configured, or none.</summary>
    public static ProblemResult? Refuse(string? feed, IWeatherFeeds feeds) =>
        feed is null || feeds.Find(feed) is not null
            ? null
            : Problem.InvalidInput(FieldError.Of("feed", $"\"{feed}\"", Allowed(feeds)));

    /// <summary>Whether weather fetched for the one is weather of the other.</summary>
    public static bool IsSamePlace(StoredSite site, StoredSite other) =>
        (site.Site.LatitudeDeg, site.Site.LongitudeDeg, site.Site.ElevationM)
        == (other.Site.LatitudeDeg, other.Site.LongitudeDeg, other.Site.ElevationM);

    private static string Allowed(IWeatherFeeds feeds) => feeds.All.Count == 0
        ? "null: no feed is configured"
        : "null or one of: " + string.Join(", ", feeds.All.Select(feed => feed.Name));
}

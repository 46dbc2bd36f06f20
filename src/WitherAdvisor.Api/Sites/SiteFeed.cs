using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Api.Sites;

/// <summary>Which feed a site may name.</summary>
internal static class SiteFeed
{
    /// <summary>Null where the feed is one that the operator configured, or none.</summary>
    public static ProblemResult? Refuse(string? feed, IWeatherFeeds feeds) =>
        feed is null || feeds.Find(feed) is not null
            ? null
            : Problem.InvalidInput(FieldError.Of("feed", $"\"{feed}\"", Allowed(feeds)));

    private static string Allowed(IWeatherFeeds feeds) => feeds.All.Count == 0
        ? "null: no feed is configured"
        : "null or one of: " + string.Join(", ", feeds.All.Select(feed => feed.Name));
}

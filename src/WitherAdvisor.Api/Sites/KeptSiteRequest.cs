using WitherAdvisor.Fields;

namespace WitherAdvisor.Api.Sites;

/// <summary>
/// A site to keep. The feed stands here and not beside the other settings, as an advice is made of weather and not of
/// the way that the weather came in.
/// </summary>
public sealed record KeptSiteRequest : SiteRequest
{
    internal const int LongestFeedName = 40;

    /// <summary>Name of the feed that its weather is fetched from, one of GET /v1/feeds; none when left out.</summary>
    /// <example>hill</example>
    [Text(LongestFeedName)]
    public string? Feed { get; init; }
}

using WitherAdvisor.Loft.Kept.Sites;

namespace WitherAdvisor.Api.Pages.Home;

/// <summary>A site and its troughs.</summary>
public sealed record SiteOnHand(StoredSite Site, IReadOnlyList<TroughOnHand> Troughs);

using WitherAdvisor.Loft.FeedRefresh;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Review;

namespace WitherAdvisor.Loft.WeatherReviewing;

/// <summary>A site with a review of its weather.</summary>
/// <param name="Feed">The feed that its weather is fetched from; null where none is.</param>
public sealed record ReviewedSite(StoredSite Site, WeatherReview Review, FeedState? Feed);

namespace WitherAdvisor.WeatherFeeds;

/// <summary>How a feed has been doing since the service started.</summary>
/// <param name="FeedName">As the operator named it.</param>
/// <param name="Breaker">Whether it is being asked at all.</param>
/// <param name="LastGoodAt">When it last gave a series; null if never.</param>
/// <param name="LastErrorAt">When it last gave none; null if never.</param>
/// <param name="LastError">Why it gave none then.</param>
/// <param name="RetryAfter">It is not asked before this instant; null where it may be asked now.</param>
public sealed record FeedHealth(
    string FeedName,
    FeedBreaker Breaker,
    DateTimeOffset? LastGoodAt,
    DateTimeOffset? LastErrorAt,
    FeedAnswer.Refused? LastError,
    DateTimeOffset? RetryAfter);

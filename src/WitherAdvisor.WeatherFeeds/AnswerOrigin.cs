namespace WitherAdvisor.WeatherFeeds;

/// <summary>What was asked of whom, and when the answer came.</summary>
/// <param name="Query">What was asked.</param>
/// <param name="FeedName">As the operator named it.</param>
/// <param name="Attribution">The feed's line.</param>
/// <param name="Key">Ours, to be kept out of texts.</param>
/// <param name="FetchedAt">By our clock.</param>
/// <param name="DatedAt">By the answer's Date header; null where it has none.</param>
internal sealed record AnswerOrigin(
    FeedQuery Query,
    string FeedName,
    string Attribution,
    string? Key,
    DateTimeOffset FetchedAt,
    DateTimeOffset? DatedAt);

using WitherAdvisor.Loft.Kept.Weather;

namespace WitherAdvisor.Loft.FeedRefresh;

/// <summary>A site's feed and how it has been doing.</summary>
/// <param name="Name">As the operator named it.</param>
/// <param name="Attribution">The line that has to stand beside its numbers; null where the operator no longer has the feed.</param>
/// <param name="Last">The last fetch, good or not; null where there was none.</param>
/// <param name="LastGood">The last that gave weather; null where none did.</param>
public sealed record FeedState(string Name, string? Attribution, FeedFetch? Last, FeedFetch? LastGood);

using WitherAdvisor.Loft.Kept.Weather;

namespace WitherAdvisor.Api.Wording;

/// <summary>How it stands with the feed of a site, in words.</summary>
public static class FeedWording
{
    /// <summary>What came of asking it, how old its weather is, and its line.</summary>
    /// <param name="feed">Its name.</param>
    /// <param name="attribution">The line that its licence wants; null where it is no longer configured.</param>
    /// <param name="last">What came of asking it last; null if it never was.</param>
    /// <param name="good">The last time that it gave weather; null if it never did.</param>
    /// <param name="clock">The site's.</param>
    public static string State(string feed, string? attribution, FeedFetch? last, FeedFetch? good, WallClock clock) => string.Join(' ',
        new[] { Asked(feed, last, clock), Kept(last, good, clock), Configured(feed, attribution) }.Where(part => part.Length > 0));

    private static string Asked(string feed, FeedFetch? last, WallClock clock) => last switch
    {
        null => $"The feed {feed} has not been asked for weather of this site yet.",
        { Refusal: { } refusal } => $"The feed {feed} gave no weather on {clock.DateAndClock(last.FetchedAt)}. {Ended(FeedFaultWording.Sentence(refusal))}",
        _ => $"Weather of the feed {feed} came on {clock.DateAndClock(last.FetchedAt)}.",
    };

    private static string Kept(FeedFetch? last, FeedFetch? good, WallClock clock) => (last, good) switch
    {
        (null, _) or ({ IsGood: true }, _) => "",
        (_, null) => "It never gave any for this site.",
        _ => $"What is kept of it came on {clock.DateAndClock(good.FetchedAt)}.",
    };

    private static string Configured(string feed, string? attribution) => attribution switch
    {
        null => $"The feed {feed} is no longer configured, so it is not asked any more.",
        "" => "",
        _ => Ended(attribution),
    };

    private static string Ended(string words) => words is [.., '.' or '!' or '?' or '…'] ? words : words + ".";
}

using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Words.Weather;

/// <summary>How it stands with the feed of a site, in words.</summary>
public static class FeedWording
{
    /// <summary>What came of asking it, how old its weather is, and its line.</summary>
    /// <param name="feed">Its name.</param>
    /// <param name="attribution">The line that its licence wants; null where it is no longer configured.</param>
    /// <param name="last">What came of asking it last; null if it never was.</param>
    /// <param name="goodAt">The last time that it gave weather; null if it never did.</param>
    /// <param name="clock">The site's.</param>
    public static string State(Wordbook words, string feed, string? attribution, FeedAsked? last, DateTimeOffset? goodAt, WallClock clock) => string.Join(' ',
        new[] { Asked(words, feed, last, clock), Kept(words, last, goodAt, clock), Configured(words, feed, attribution) }.Where(part => part.Length > 0));

    /// <summary>How it has been doing, for a page that names it, a sentence each.</summary>
    public static IEnumerable<Told> Standing(
        Wordbook words, DateTimeOffset? lastAt, Told? refusal, DateTimeOffset? goodAt, bool isConfigured, WallClock clock) =>
    [
        Told.Now(goodAt is { } at ? words.Say("feed.last_gave", ("time", clock.DateAndClock(at))) : words["feed.gave_none_yet"]),
        .. lastAt is { } asked && refusal is not null
            ? (Told[])[Told.Now(words.Say("feed.last_refused", ("time", clock.DateAndClock(asked)))), refusal]
            : [],
        .. isConfigured ? (Told[])[] : [Told.Now(words["feed.gone"])],
    ];

    private static string Asked(Wordbook words, string feed, FeedAsked? last, WallClock clock) => last switch
    {
        null => words.Say("feed.never_asked", ("feed", feed)),
        { Refusal: { } refusal } => words.Say("feed.gave_none", ("feed", feed), ("time", clock.DateAndClock(last.At)), ("refusal", Ended(refusal))),
        _ => words.Say("feed.came", ("feed", feed), ("time", clock.DateAndClock(last.At))),
    };

    private static string Kept(Wordbook words, FeedAsked? last, DateTimeOffset? goodAt, WallClock clock) => (last, goodAt) switch
    {
        (null or { Refusal: null }, _) => "",
        (_, null) => words["feed.never_gave"],
        (_, { } at) => words.Say("feed.kept_came", ("time", clock.DateAndClock(at))),
    };

    private static string Configured(Wordbook words, string feed, string? attribution) => attribution switch
    {
        null => words.Say("feed.not_configured", ("feed", feed)),
        "" => "",
        _ => Ended(attribution),
    };

    private static string Ended(string sentence) => sentence is [.., '.' or '!' or '?' or '…'] ? sentence : sentence + ".";
}

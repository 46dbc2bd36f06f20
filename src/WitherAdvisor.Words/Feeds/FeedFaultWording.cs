using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Words.Feeds;

/// <summary>Why a feed gave no weather, in a sentence.</summary>
public static class FeedFaultWording
{
    public static Told Tell(Wordbook words, FeedFault fault) =>
        fault is FeedFault.SaidThen then ? Told.Then(words, then.Sentence) : Told.Now(Sentence(words, fault));

    public static string Sentence(Wordbook words, FeedFault fault) => fault switch
    {
        FeedFault.HostUnknown => words["feed_fault.host_unknown"],
        FeedFault.NotSecure => words["feed_fault.not_secure"],
        FeedFault.NotReached => words["feed_fault.not_reached"],
        FeedFault.TooManyHeaders => words["feed_fault.too_many_headers"],
        FeedFault.BrokeOff => words["feed_fault.broke_off"],
        FeedFault.DamagedCompression => words["feed_fault.damaged_compression"],
        FeedFault.NoArchive => words["feed_fault.no_archive"],
        FeedFault.OverLimit over => words.Say("feed_fault.over_limit", ("bytes", over.MostBytes)),
        FeedFault.QuestionRefused refused => Said(words, words["feed_fault.question_refused"], refused.Said),
        FeedFault.KeyRefused refused => Said(words, words.Say("feed_fault.key_refused", ("status", refused.Status)), refused.Said),
        FeedFault.NoSuchPage no => Said(words, words["feed_fault.no_such_page"], no.Said),
        FeedFault.LimitUsedUp limit => Said(words, words["feed_fault.limit_used_up"], limit.Said),
        FeedFault.FeedFailed failed => Said(words, words.Say("feed_fault.feed_failed", ("status", failed.Status)), failed.Said),
        FeedFault.PointsElsewhere elsewhere => words.Say("feed_fault.points_elsewhere", ("where", Where(words, elsewhere))),
        FeedFault.OtherStatus other => Said(words, words.Say("feed_fault.other_status", ("status", other.Status)), other.Said),
        FeedFault.TookTooLong slow => Before(words, words.Say("feed_fault.took_too_long", ("seconds", $"{slow.WithinSeconds:0.###}")), slow.Before),
        FeedFault.LeftInPeace left => Before(words, words["feed_fault.left_in_peace"], left.Before),
        FeedFault.TooManyWait => words["feed_fault.too_many_wait"],
        FeedFault.SiteMoved => words["feed_fault.site_moved"],
        FeedFault.SaidThen then => then.Sentence,
        _ => FeedShapeWording.Sentence(words, fault),
    };

    private static string Said(Wordbook words, string fault, string? said) => said switch
    {
        null => fault,
        "" => words.Say("feed_fault.no_reason", ("fault", fault)),
        _ => words.Say("feed_fault.said", ("fault", fault), ("said", said)),
    };

    private static string Where(Wordbook words, FeedFault.PointsElsewhere elsewhere) => elsewhere.Where switch
    {
        Elsewhere.Nowhere => words["feed_fault.points_elsewhere.nowhere"],
        Elsewhere.Path => words["feed_fault.points_elsewhere.path"],
        Elsewhere.Host => elsewhere.Host!,
        _ => throw new ArgumentOutOfRangeException(nameof(elsewhere), elsewhere.Where, "No words for this address."),
    };

    private static string Before(Wordbook words, string fault, FeedFault? before) => before is null
        ? fault
        : words.Say("feed_fault.before", ("fault", fault), ("before", Sentence(words, before)));
}

using WitherAdvisor.WeatherFeeds;

namespace WitherAdvisor.Words.Feeds;

/// <summary>Why a feed gave no weather, in a sentence.</summary>
public static class FeedFaultWording
{
    public static string Sentence(FeedFault fault) => fault switch
    {
        FeedFault.HostUnknown => "The feed's host name is not known: no network, or a wrong address.",
        FeedFault.NotSecure => "No secure connection to the feed: its certificate or its TLS was not accepted.",
        FeedFault.NotReached => "The feed's host could not be reached or refused the connection.",
        FeedFault.TooManyHeaders => "The feed's answer has more headers than a feed needs.",
        FeedFault.BrokeOff => "The connection to the feed broke before the answer was whole.",
        FeedFault.DamagedCompression => "The feed's compressed answer is damaged.",
        FeedFault.NoArchive => "This feed has no archive of past days configured.",
        FeedFault.OverLimit over => $"The feed's answer is over {over.MostBytes} bytes.",
        FeedFault.QuestionRefused refused => $"The feed refused what was asked{Said(refused.Said)}",
        FeedFault.KeyRefused refused => $"The feed wants another key (status {refused.Status}){Said(refused.Said)}",
        FeedFault.NoSuchPage no => $"The feed has no such page (status 404); is its base address right?{Said(no.Said)}",
        FeedFault.LimitUsedUp limit => $"The feed's limit of requests is used up{Said(limit.Said)}",
        FeedFault.FeedFailed failed => $"The feed failed (status {failed.Status}){Said(failed.Said)}",
        FeedFault.PointsElsewhere elsewhere =>
            $"The feed points elsewhere ({Where(elsewhere)}); that is not followed, as only the operator chooses addresses.",
        FeedFault.OtherStatus other => $"The feed answered with status {other.Status}{Said(other.Said)}",
        FeedFault.TookTooLong slow => $"No whole answer within {slow.WithinSeconds:0.###} s.{Before(slow.Before)}",
        FeedFault.LeftInPeace left => $"The feed failed again and again and is left in peace for a while.{Before(left.Before)}",
        FeedFault.TooManyWait => "Too many fetches of this feed wait already.",
        FeedFault.SiteMoved =>
            "The site was moved while its feed was asked: nothing was taken, and the feed has to be asked again.",
        FeedFault.SaidThen then => then.Sentence,
        _ => FeedShapeWording.Sentence(fault),
    };

    private static string Said(string? words) => words switch
    {
        null => "",
        "" => ": no reason given",
        _ => $": {words}",
    };

    private static string Where(FeedFault.PointsElsewhere elsewhere) => elsewhere.Where switch
    {
        Elsewhere.Nowhere => "nowhere",
        Elsewhere.Path => "another path",
        Elsewhere.Host => elsewhere.Host!,
        _ => throw new ArgumentOutOfRangeException(nameof(elsewhere), elsewhere.Where, "No words for this address."),
    };

    private static string Before(FeedFault? fault) => fault is null ? "" : $" Before that: {Sentence(fault)}";
}

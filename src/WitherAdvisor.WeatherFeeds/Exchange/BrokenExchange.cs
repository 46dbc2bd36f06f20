using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Exchange;

/// <summary>What an exception of the network means; texts of the runtime are not passed on, as they name addresses.</summary>
internal static class BrokenExchange
{
    /// <summary>Null where it is none of the network's.</summary>
    public static Refused? Of(Exception exception) => exception switch
    {
        HttpRequestException { HttpRequestError: HttpRequestError.NameResolutionError } =>
            new(RefusalReason.NoConnection, "The feed's host name is not known: no network, or a wrong address."),
        HttpRequestException { HttpRequestError: HttpRequestError.SecureConnectionError } =>
            new(RefusalReason.NoConnection, "No secure connection to the feed: its certificate or its TLS was not accepted."),
        HttpRequestException { HttpRequestError: HttpRequestError.ConnectionError or HttpRequestError.ProxyTunnelError } =>
            new(RefusalReason.NoConnection, "The feed's host could not be reached or refused the connection."),
        HttpRequestException { HttpRequestError: HttpRequestError.ConfigurationLimitExceeded } =>
            new(RefusalReason.TooLarge, "The feed's answer has more headers than a feed needs."),
        HttpRequestException or IOException =>
            new(RefusalReason.ConnectionLost, "The connection to the feed broke before the answer was whole."),
        InvalidDataException =>
            new(RefusalReason.BrokenJson, "The feed's compressed answer is damaged."),
        _ => null,
    };
}

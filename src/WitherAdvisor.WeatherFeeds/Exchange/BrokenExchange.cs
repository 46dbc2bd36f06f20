using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Exchange;

/// <summary>What an exception of the network means; words of the runtime are not passed on, as they name addresses.</summary>
internal static class BrokenExchange
{
    /// <summary>Null where it is none of the network's.</summary>
    public static Refused? Of(Exception exception) => exception switch
    {
        HttpRequestException { HttpRequestError: HttpRequestError.NameResolutionError } =>
            new(RefusalReason.NoConnection, new FeedFault.HostUnknown()),
        HttpRequestException { HttpRequestError: HttpRequestError.SecureConnectionError } =>
            new(RefusalReason.NoConnection, new FeedFault.NotSecure()),
        HttpRequestException { HttpRequestError: HttpRequestError.ConnectionError or HttpRequestError.ProxyTunnelError } =>
            new(RefusalReason.NoConnection, new FeedFault.NotReached()),
        HttpRequestException { HttpRequestError: HttpRequestError.ConfigurationLimitExceeded } =>
            new(RefusalReason.TooLarge, new FeedFault.TooManyHeaders()),
        HttpRequestException or IOException =>
            new(RefusalReason.ConnectionLost, new FeedFault.BrokeOff()),
        InvalidDataException =>
            new(RefusalReason.BrokenJson, new FeedFault.DamagedCompression()),
        _ => null,
    };
}

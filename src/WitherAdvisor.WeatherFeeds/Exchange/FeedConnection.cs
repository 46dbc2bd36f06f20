using System.Net;

namespace WitherAdvisor.WeatherFeeds.Exchange;

/// <summary>How connections to feeds are made.</summary>
internal static class FeedConnection
{
    /// <summary>Of the client in the factory.</summary>
    public const string Name = "weather-feed";

    public static SocketsHttpHandler Handler() => new()
    {
        // An address that a feed points to was written by the feed, not by the operator.
        AllowAutoRedirect = false,
        // Unpacked as it is read, so the cap on the body holds for what comes out.
        AutomaticDecompression = DecompressionMethods.GZip | DecompressionMethods.Deflate,
        MaxResponseHeadersLength = 32,
        // The rest of a body over the cap is not worth waiting for.
        MaxResponseDrainSize = 0,
        PooledConnectionLifetime = TimeSpan.FromMinutes(5),
        UseCookies = false,
    };
}

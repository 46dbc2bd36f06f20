namespace WitherAdvisor.WeatherFeeds.Configuration;

/// <summary>One feed: where it is, how it is asked, how long it is waited for.</summary>
public sealed class FeedOptions
{
    /// <summary>As far as Open-Meteo's own forecast host goes back.</summary>
    public const int MostPastDays = 92;

    /// <summary>Of the host that knows the last and coming days; "v1/forecast" is put behind it.</summary>
    public Uri? ForecastBaseUrl { get; set; }

    /// <summary>Of the host that knows years; "v1/archive" is put behind it. Null where the feed has none.</summary>
    public Uri? ArchiveBaseUrl { get; set; }

    /// <summary>A feed without TLS may be read by others and forged by them: fine on one's own network, so it has to be said.</summary>
    public bool AllowHttp { get; set; }

    /// <summary>The key, where the feed wants one; sent in a header or in the query, whichever is named.</summary>
    public string? Key { get; set; }

    public string? KeyHeader { get; set; }

    public string? KeyQueryParameter { get; set; }

    /// <summary>The line that the feed's licence wants beside its numbers.</summary>
    public string Attribution { get; set; } = "";

    /// <summary>The most past days that the feed gives in one answer, 1 to 92: one that gives fewer refuses to be asked for more.</summary>
    public int PastDays { get; set; } = MostPastDays;

    /// <summary>One try, from connecting to the last byte.</summary>
    public TimeSpan TryLimit { get; set; } = TimeSpan.FromSeconds(10);

    /// <summary>A whole fetch: waiting its turn, all tries and the pauses between.</summary>
    public TimeSpan TotalLimit { get; set; } = TimeSpan.FromSeconds(30);

    /// <summary>Tries after the first, 0 to 3.</summary>
    public int Retries { get; set; } = 2;

    /// <summary>Pause before the first retry; later ones double, each jittered.</summary>
    public TimeSpan RetryPause { get; set; } = TimeSpan.FromSeconds(1);

    /// <summary>Fetches of this feed at one time, 1 to 8. A free public feed lets one address run one.</summary>
    public int MostAtOnce { get; set; } = 1;

    /// <summary>Fetches that may wait their turn; those beyond are refused at once.</summary>
    public int MostWaiting { get; set; } = 32;

    /// <summary>Failed tries within <see cref="BreakerWindow"/> that open the breaker, if nearly all failed.</summary>
    public int BreakerFailures { get; set; } = 6;

    public TimeSpan BreakerWindow { get; set; } = TimeSpan.FromMinutes(10);

    /// <summary>How long an open breaker leaves the feed in peace.</summary>
    public TimeSpan BreakerRest { get; set; } = TimeSpan.FromMinutes(2);

    /// <summary>Largest body, after decompression. A year of hours has about half a megabyte.</summary>
    public int MostBodyBytes { get; set; } = 4 * 1024 * 1024;
}

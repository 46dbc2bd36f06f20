using System.Net.Http.Headers;

namespace WitherAdvisor.WeatherFeeds.Exchange;

/// <summary>When a feed that sent us away may be asked again.</summary>
internal static class RetryAfterTime
{
    /// <summary>No feed silences itself for longer by one header.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromDays(1);

    /// <summary>The feed's clock and ours need not agree.</summary>
    private static readonly TimeSpan Margin = TimeSpan.FromMinutes(1);

    /// <summary>By the Retry-After header; null where there is none.</summary>
    public static DateTimeOffset? ByHeader(RetryConditionHeaderValue? header, DateTimeOffset now)
    {
        TimeSpan? wait = header?.Delta ?? header?.Date - now;
        return wait is null ? null : now + TimeSpan.FromTicks(Math.Clamp(wait.Value.Ticks, 0, Longest.Ticks));
    }

    /// <summary>
    /// By the feed's words, as Open-Meteo servers never set the header: counters of a minute are cleared each minute, of an
    /// hour at the full hour, of a day at 0:00 UTC. Null where only too many ran at the same moment: that passes by itself.
    /// </summary>
    public static DateTimeOffset? ByWords(string? reason, DateTimeOffset now) => reason switch
    {
        not null when Says(reason, "concurrent") => null,
        not null when Says(reason, "hourly") => Truncated(now, TimeSpan.FromHours(1)) + TimeSpan.FromHours(1) + Margin,
        not null when Says(reason, "daily") => Truncated(now, TimeSpan.FromDays(1)) + TimeSpan.FromDays(1) + Margin,
        _ => now + Margin,
    };

    private static bool Says(string reason, string word) => reason.Contains(word, StringComparison.OrdinalIgnoreCase);

    private static DateTimeOffset Truncated(DateTimeOffset time, TimeSpan step) =>
        new(time.UtcTicks - time.UtcTicks % step.Ticks, TimeSpan.Zero);
}

using Polly.CircuitBreaker;
using Polly.RateLimiting;
using Polly.Timeout;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Resilience;

/// <summary>What it means that a strategy ended a fetch.</summary>
internal static class StrategyRefusal
{
    /// <summary>Null where it was none of the strategies.</summary>
    /// <param name="exception">What came out of the pipeline.</param>
    /// <param name="lastFault">Of an earlier try; null where there was none.</param>
    /// <param name="now">By our clock.</param>
    public static Refused? Of(Exception exception, Refused? lastFault, DateTimeOffset now) => exception switch
    {
        TimeoutRejectedException timeout => new(RefusalReason.TimedOut,
            $"No whole answer within {timeout.Timeout.TotalSeconds:0.###} s.{Before(lastFault)}"),
        BrokenCircuitException breaker => new(RefusalReason.BreakerOpen,
            $"The feed failed again and again and is left in peace for a while.{Before(lastFault)}", now + breaker.RetryAfter),
        RateLimiterRejectedException => new(RefusalReason.TooBusy, "Too many fetches of this feed wait already."),
        _ => null,
    };

    private static string Before(Refused? fault) => fault is null ? "" : $" Before that: {fault.Text}";
}

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
        TimeoutRejectedException timeout => new(RefusalReason.TimedOut, new FeedFault.TookTooLong(timeout.Timeout.TotalSeconds, lastFault?.Fault)),
        BrokenCircuitException breaker => new(RefusalReason.BreakerOpen, new FeedFault.LeftInPeace(lastFault?.Fault), now + breaker.RetryAfter),
        RateLimiterRejectedException => new(RefusalReason.TooBusy, new FeedFault.TooManyWait()),
        _ => null,
    };
}

using Microsoft.Extensions.Logging;
using Polly;
using Polly.CircuitBreaker;
using Polly.Retry;
using Polly.Timeout;
using WitherAdvisor.WeatherFeeds.Configuration;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Resilience;

/// <summary>
/// The strategies round one feed, outermost first. They stand round the whole try, sending and reading, and not round the
/// sending alone as a handler of the HttpClient would: the limit of a try has to cover a body that drips, a broken body
/// is worth a second try, and how long a feed sends us away for stands in its body.
/// </summary>
internal static class FeedPipeline
{
    /// <summary>Nearly all: a feed that fails now and then is still asked.</summary>
    private const double BreakerShare = 0.9;

    public static ResiliencePipeline<FeedAnswer> Of(
        string feedName, FeedOptions options, CircuitBreakerStateProvider breaker, TimeProvider clock, ILoggerFactory logs)
    {
        var builder = new ResiliencePipelineBuilder<FeedAnswer>
        {
            Name = "weather-feed",
            InstanceName = feedName,
            TimeProvider = clock,
        };
        return builder
            .AddTimeout(new TimeoutStrategyOptions { Name = "total", Timeout = options.TotalLimit })
            .AddConcurrencyLimiter(options.MostAtOnce, options.MostWaiting)
            .AddFeedRetry(options, clock)
            .AddCircuitBreaker(Breaker(options, breaker))
            .AddTimeout(new TimeoutStrategyOptions { Name = "try", Timeout = options.TryLimit })
            .ConfigureTelemetry(logs)
            .Build();
    }

    private static ResiliencePipelineBuilder<FeedAnswer> AddFeedRetry(
        this ResiliencePipelineBuilder<FeedAnswer> builder, FeedOptions options, TimeProvider clock) =>
        options.Retries == 0 ? builder : builder.AddRetry(new RetryStrategyOptions<FeedAnswer>
        {
            MaxRetryAttempts = options.Retries,
            BackoffType = DelayBackoffType.Exponential,
            Delay = options.RetryPause,
            UseJitter = true,
            ShouldHandle = args => ValueTask.FromResult(
                RetryPolicy.AllowsAnotherTry(args.Outcome, args.AttemptNumber, FetchProgress.Of(args.Context).Deadline)),
            DelayGenerator = args => ValueTask.FromResult(Pause(args.Outcome, clock)),
        });

    private static CircuitBreakerStrategyOptions<FeedAnswer> Breaker(FeedOptions options, CircuitBreakerStateProvider state) => new()
    {
        FailureRatio = BreakerShare,
        MinimumThroughput = options.BreakerFailures,
        SamplingDuration = options.BreakerWindow,
        BreakDuration = options.BreakerRest,
        StateProvider = state,
        ShouldHandle = args => ValueTask.FromResult(RetryPolicy.CountsAsFailure(args.Outcome)),
    };

    // Null leaves the pause to the jittered back-off.
    private static TimeSpan? Pause(Outcome<FeedAnswer> outcome, TimeProvider clock)
    {
        TimeSpan? wait = (outcome.Result as Refused)?.RetryAfter - clock.GetUtcNow();
        return wait > TimeSpan.Zero ? wait : null;
    }
}

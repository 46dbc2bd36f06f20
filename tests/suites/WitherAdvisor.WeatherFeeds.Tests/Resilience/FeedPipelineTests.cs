using Microsoft.Extensions.Logging.Abstractions;
using Polly;
using Polly.CircuitBreaker;
using Polly.RateLimiting;
using Polly.Retry;
using Polly.Testing;
using Polly.Timeout;
using WitherAdvisor.WeatherFeeds.Configuration;
using WitherAdvisor.WeatherFeeds.Resilience;

namespace WitherAdvisor.WeatherFeeds.Tests.Resilience;

public sealed class FeedPipelineTests
{
    [Fact]
    public void The_strategies_stand_in_this_order()
    {
        Type[] order = [.. Strategies(new()).Select(strategy => strategy.Options!.GetType())];

        Assert.Equal(
            [
                typeof(TimeoutStrategyOptions), typeof(RateLimiterStrategyOptions), typeof(RetryStrategyOptions<FeedAnswer>),
                typeof(CircuitBreakerStrategyOptions<FeedAnswer>), typeof(TimeoutStrategyOptions),
            ],
            order);
    }

    [Fact]
    public void The_limits_are_the_operators()
    {
        var options = new FeedOptions
        {
            TotalLimit = TimeSpan.FromSeconds(40),
            TryLimit = TimeSpan.FromSeconds(9),
            Retries = 3,
            RetryPause = TimeSpan.FromSeconds(2),
            BreakerFailures = 7,
            BreakerWindow = TimeSpan.FromMinutes(11),
            BreakerRest = TimeSpan.FromMinutes(3),
        };

        ResilienceStrategyOptions[] strategies = [.. Strategies(options).Select(strategy => strategy.Options!)];

        Assert.Equal(options.TotalLimit, Assert.IsType<TimeoutStrategyOptions>(strategies[0]).Timeout);
        Assert.Equal(options.TryLimit, Assert.IsType<TimeoutStrategyOptions>(strategies[4]).Timeout);
        var breaker = Assert.IsType<CircuitBreakerStrategyOptions<FeedAnswer>>(strategies[3]);
        Assert.Equal((7, options.BreakerWindow, options.BreakerRest), (breaker.MinimumThroughput, breaker.SamplingDuration, breaker.BreakDuration));
    }

    [Fact]
    public void Retries_are_few_growing_and_jittered()
    {
        RetryStrategyOptions<FeedAnswer> retry = Strategies(new()).Select(strategy => strategy.Options)
            .OfType<RetryStrategyOptions<FeedAnswer>>().Single();

        Assert.Equal(2, retry.MaxRetryAttempts);
        Assert.Equal(DelayBackoffType.Exponential, retry.BackoffType);
        Assert.True(retry.UseJitter);
        Assert.Equal(TimeSpan.FromSeconds(1), retry.Delay);
    }

    [Fact]
    public void Without_retries_there_is_no_strategy_for_them() =>
        Assert.DoesNotContain(Strategies(new() { Retries = 0 }), strategy => strategy.Options is RetryStrategyOptions<FeedAnswer>);

    private static IReadOnlyList<ResilienceStrategyDescriptor> Strategies(FeedOptions options) =>
        [.. FeedPipeline.Of("invented", options, new(), TimeProvider.System, NullLoggerFactory.Instance)
            .GetPipelineDescriptor().Strategies];
}

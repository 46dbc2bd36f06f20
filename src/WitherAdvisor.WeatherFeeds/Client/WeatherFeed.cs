using Microsoft.Extensions.Logging;
using Polly;
using Polly.CircuitBreaker;
using WitherAdvisor.WeatherFeeds.Configuration;
using WitherAdvisor.WeatherFeeds.Exchange;
using WitherAdvisor.WeatherFeeds.Resilience;
using static WitherAdvisor.WeatherFeeds.FeedAnswer;

namespace WitherAdvisor.WeatherFeeds.Client;

/// <summary>One configured feed: a typed client within its strategies.</summary>
internal sealed class WeatherFeed : IWeatherFeed, IDisposable
{
    private readonly FeedOptions options;
    private readonly FeedExchange exchange;
    private readonly CircuitBreakerStateProvider breaker = new();
    private readonly ResiliencePipeline<FeedAnswer> pipeline;
    private readonly SharedFetches shared = new();
    private readonly FeedLog log = new();
    private readonly CancellationTokenSource stopping = new();
    private readonly TimeProvider clock;
    private readonly ILogger<WeatherFeed> logger;

    public WeatherFeed(string name, FeedOptions options, IHttpClientFactory clients, TimeProvider clock, ILoggerFactory logs)
    {
        Name = name;
        this.options = options;
        this.clock = clock;
        exchange = new(name, options, clients, clock);
        pipeline = FeedPipeline.Of(name, options, breaker, clock, logs);
        logger = logs.CreateLogger<WeatherFeed>();
    }

    public string Name { get; }

    public string Attribution => options.Attribution;

    public int PastDays => options.PastDays;

    public FeedHealth Health => log.Health(Name, breaker.CircuitState switch
    {
        CircuitState.Closed => FeedBreaker.Closed,
        CircuitState.HalfOpen => FeedBreaker.Trying,
        _ => FeedBreaker.Open,
    }, clock.GetUtcNow());

    public Task<FeedAnswer> Fetch(FeedQuery query, CancellationToken cancel = default) =>
        shared.JoinOrStart(query, FetchOnce).WaitAsync(cancel);

    public void Dispose()
    {
        stopping.Cancel();
        stopping.Dispose();
    }

    private async Task<FeedAnswer> FetchOnce(FeedQuery query)
    {
        if (log.Standing(clock.GetUtcNow()) is { } sentAway)
        {
            return sentAway;
        }

        FeedAnswer answer = await AskWithinLimits(query);
        log.Write(answer, clock.GetUtcNow());
        if (answer is Refused refused)
        {
            logger.LogWarning("Weather feed {Feed} gave nothing ({Reason}): {Fault}", Name, refused.Reason, refused.Fault);
        }

        return answer;
    }

    private async Task<FeedAnswer> AskWithinLimits(FeedQuery query)
    {
        var progress = new FetchProgress(clock.GetUtcNow() + options.TotalLimit);
        ResilienceContext context = ResilienceContextPool.Shared.Get(stopping.Token);
        progress.PutInto(context);
        try
        {
            return await pipeline.ExecuteAsync(async trying => await Ask(query, progress, trying.CancellationToken), context);
        }
        catch (Exception exception) when (StrategyRefusal.Of(exception, progress.LastFault, clock.GetUtcNow()) is not null)
        {
            return StrategyRefusal.Of(exception, progress.LastFault, clock.GetUtcNow())!;
        }
        finally
        {
            ResilienceContextPool.Shared.Return(context);
        }
    }

    private async Task<FeedAnswer> Ask(FeedQuery query, FetchProgress progress, CancellationToken cancel)
    {
        FeedAnswer answer = await exchange.Ask(query, cancel);
        progress.LastFault = answer as Refused ?? progress.LastFault;
        return answer;
    }
}

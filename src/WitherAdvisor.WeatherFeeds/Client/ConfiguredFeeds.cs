using System.Collections.Frozen;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using WitherAdvisor.WeatherFeeds.Configuration;

namespace WitherAdvisor.WeatherFeeds.Client;

/// <summary>Builds each configured feed once, so that its breaker, its waits and its health are one.</summary>
internal sealed class ConfiguredFeeds : IWeatherFeeds, IDisposable
{
    private readonly FrozenDictionary<string, WeatherFeed> byName;

    public ConfiguredFeeds(
        IOptions<WeatherFeedsOptions> options, IHttpClientFactory clients, TimeProvider clock, ILoggerFactory logs)
    {
        byName = options.Value.Feeds.ToFrozenDictionary(
            feed => feed.Key, feed => new WeatherFeed(feed.Key, feed.Value, clients, clock, logs), StringComparer.Ordinal);
        All = [.. byName.Values.OrderBy(feed => feed.Name, StringComparer.Ordinal)];
    }

    public IReadOnlyList<IWeatherFeed> All { get; }

    public IWeatherFeed? Find(string name) => byName.GetValueOrDefault(name);

    public void Dispose()
    {
        foreach (WeatherFeed feed in byName.Values)
        {
            feed.Dispose();
        }
    }
}

using System.Globalization;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using WitherAdvisor.WeatherFeeds.Client;

namespace WitherAdvisor.WeatherFeeds.Tests;

/// <summary>A feed configured as an operator would, in a host of its own, with a clock that stands still.</summary>
internal sealed class Feed : IDisposable
{
    public const string Name = "invented";

    private readonly ServiceProvider host;

    /// <param name="baseUrl">Of the forecast host.</param>
    /// <param name="settings">More of the feed's settings, as in the configuration; retries are immediate unless stated.</param>
    public Feed(string baseUrl, params (string Name, string Value)[] settings)
    {
        var all = new Dictionary<string, string?>(StringComparer.Ordinal)
        {
            [Key("ForecastBaseUrl")] = baseUrl,
            [Key("AllowHttp")] = "true",
            [Key("RetryPause")] = "00:00:00",
            [Key("Attribution")] = "Invented weather",
        };
        foreach ((string name, string value) in settings)
        {
            all[Key(name)] = value;
        }

        host = new ServiceCollection()
            .AddSingleton<TimeProvider>(Clock)
            .AddLogging(logs => logs.SetMinimumLevel(LogLevel.Trace).AddProvider(Log))
            .AddWeatherFeeds(new ConfigurationBuilder().AddInMemoryCollection(all).Build())
            .BuildServiceProvider();
        Client = host.GetRequiredService<IWeatherFeeds>().Find(Name)!;
    }

    public WatchedClock Clock { get; } = new();

    /// <summary>Every line that was logged, at every level.</summary>
    public LogLines Log { get; } = new();

    public IWeatherFeed Client { get; }

    public FeedHealth Health => Client.Health;

    public static (string Name, string Value) Seconds(string name, double seconds) =>
        (name, TimeSpan.FromSeconds(seconds).ToString("c", CultureInfo.InvariantCulture));

    public Task<FeedAnswer> Fetch(FeedQuery? query = null) =>
        Client.Fetch(query ?? FeedFixture.Query, TestContext.Current.CancellationToken);

    public void Dispose()
    {
        host.Dispose();
        Log.Dispose();
    }

    private static string Key(string setting) => $"WeatherFeeds:Feeds:{Name}:{setting}";
}

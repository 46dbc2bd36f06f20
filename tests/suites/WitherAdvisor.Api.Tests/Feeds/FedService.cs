using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using WitherAdvisor.Api.Demo;
using WitherAdvisor.Api.Hosting;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.Store.Sqlite;
using WitherAdvisor.WeatherFeeds.Testing;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>The service with one feed, a database of its own and a clock that stands still. Fetches on demand unless told a pace.</summary>
internal sealed class FedService : WebApplicationFactory<Program>
{
    public const string Feed = "valley";
    public const string Attribution = "Invented weather";

    public static readonly TimeSpan TryLimit = TimeSpan.FromSeconds(10);
    public static readonly TimeSpan TotalLimit = TimeSpan.FromSeconds(25);

    private readonly TemporaryFolder folder = new();
    private readonly List<(string Key, string Value)> settings;

    public FedService(string feedUrl, params (string Key, string Value)[] more) => settings =
    [
        (Key("ForecastBaseUrl"), feedUrl),
        (Key("AllowHttp"), "true"),
        (Key("Attribution"), Attribution),
        (Key("Retries"), "1"),
        (Key("RetryPause"), "00:00:00"),
        (Key("TryLimit"), $"{TryLimit:c}"),
        (Key("TotalLimit"), $"{TotalLimit:c}"),
        ("FeedRefresh:Every", "00:00:00"),
        .. more,
    ];

    public FakeTimeProvider Clock { get; } = new(FeedFixture.FetchedAt);

    public string DatabaseFile => folder.File("test.db");

    public Caller Caller => new(CreateClient());

    public static string Key(string setting) => $"WeatherFeeds:Feeds:{Feed}:{setting}";

    /// <summary>A site that names the feed, with one trough.</summary>
    public async Task<TestLoft> Open()
    {
        TestLoft loft = new(Caller);
        (await loft.Caller.Put(loft.Path, FedSite())).Expect(201);
        await loft.AddTrough("trough-1");
        return loft;
    }

    public static JsonObject FedSite()
    {
        JsonObject site = Bodies.Site();
        site["feed"] = Feed;
        return site;
    }

    /// <summary>A batch loaded just now, its water for the weather to tell.</summary>
    public JsonObject Batch()
    {
        DateTimeOffset now = Clock.GetUtcNow();
        JsonObject batch = Bodies.BatchOn("trough-1");
        batch["plucked_from"] = Text(now.AddHours(-6));
        batch["plucked_to"] = Text(now.AddHours(-1.5));
        batch["loaded_at"] = Text(now);
        return batch;
    }

    public static string Text(DateTimeOffset time) => time.ToString("yyyy-MM-ddTHH:mm:sszzz");

    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        folder.Dispose();
    }

    protected override void ConfigureClient(HttpClient client)
    {
        base.ConfigureClient(client);
        client.Timeout = Patience.Longest;
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting(DatabasePath.Key, DatabaseFile);
        builder.UseSetting(DemoStart.Key, "false");
        foreach ((string key, string value) in settings)
        {
            builder.UseSetting(key, value);
        }

        builder.ConfigureTestServices(services => services.AddSingleton<TimeProvider>(Clock));
    }
}

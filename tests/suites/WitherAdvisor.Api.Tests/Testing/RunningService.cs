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

[assembly: AssemblyFixture(typeof(RunningService))]

namespace WitherAdvisor.Api.Tests.Testing;

/// <summary>The service with a database of its own, shared by all tests: each works on a site of its own.</summary>
public sealed class RunningService : WebApplicationFactory<Program>, IAsyncLifetime
{
    private readonly TemporaryFolder folder = new();

    public RunningService()
    {
        SharedLoft = new(async () =>
        {
            TestLoft loft = await TestLoft.Open(this);
            await loft.Observe(Bodies.Readings(DateTimeOffset.Parse("2026-03-01T13:00:00+05:30"), 24 * 8));
            return loft;
        });
        Document = new(async () => (await Caller.Get("/openapi/v1.json")).Expect(200).Json);
    }

    /// <summary>The file that it keeps everything in.</summary>
    public string Database => folder.File("test.db");

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 3, 1, 8, 0, 0, TimeSpan.Zero));

    /// <summary>A site for tests that leave nothing behind that others see.</summary>
    internal Lazy<Task<TestLoft>> SharedLoft { get; }

    /// <summary>The OpenAPI document as served.</summary>
    public Lazy<Task<JsonNode>> Document { get; }

    public Caller Caller => new(CreateClient());

    /// <summary>Another service that was told one thing otherwise, with a database of its own: what starts ends what runs on its file.</summary>
    public WebApplicationFactory<Program> Told(string key, string value) => WithWebHostBuilder(builder => builder
        .UseSetting(DatabasePath.Key, folder.File($"{Guid.NewGuid():N}.db"))
        .UseSetting(key, value));

    /// <summary>Starts it once: two tests that ask for it at once would else start two on one database.</summary>
    public ValueTask InitializeAsync()
    {
        _ = Server;
        return ValueTask.CompletedTask;
    }

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
        builder.UseSetting(DatabasePath.Key, Database);
        builder.UseSetting(DemoStart.Key, "false");
        // The feed that the documented example of a site names. Its host never exists (RFC 6761, section 6.4).
        builder.UseSetting("WeatherFeeds:Feeds:hill:ForecastBaseUrl", "https://feed.invalid");
        builder.ConfigureTestServices(services => services.AddSingleton<TimeProvider>(Clock));
    }
}

using System.IO.Compression;
using System.Text;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using WitherAdvisor.Api.Demo;
using WitherAdvisor.Api.Hosting;
using WitherAdvisor.Store.Sqlite;

namespace WitherAdvisor.Api.Tests.KeptBefore;

/// <summary>Today's service on a copy of a database that a released version made, its clock where that version was last looked at.</summary>
public sealed class KeptLoft : WebApplicationFactory<Program>
{
    private readonly TemporaryFolder folder = new();
    private readonly string version;

    public KeptLoft(string version)
    {
        this.version = version;
        using GZipStream packed = new(new MemoryStream(KeptFile.Bytes(version, "loft.db.gz")), CompressionMode.Decompress);
        using FileStream database = File.Create(Database);
        packed.CopyTo(database);
    }

    private string Database => folder.File("loft.db");

    public async Task<byte[]> Bytes(string path)
    {
        using HttpClient client = CreateClient(new() { AllowAutoRedirect = false });
        using HttpResponseMessage answer = await client.GetAsync(new Uri(path, UriKind.Relative), TestContext.Current.CancellationToken);
        byte[] body = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        Assert.True(answer.IsSuccessStatusCode, $"{path}: {(int)answer.StatusCode} {Encoding.UTF8.GetString(body)}");
        return body;
    }

    public async Task<string> Text(string path) => Encoding.UTF8.GetString(await Bytes(path));

    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        SqliteConnection.ClearAllPools();
        folder.Dispose();
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting(DatabasePath.Key, Database);
        builder.UseSetting(DemoStart.Key, "false");
        // The feed that a site of the database names. Its host never exists (RFC 6761, section 6.4), and nobody asks it.
        builder.UseSetting("WeatherFeeds:Feeds:hill:ForecastBaseUrl", "https://feed.invalid");
        builder.UseSetting("WeatherFeeds:Feeds:hill:Attribution", "Invented weather");
        builder.UseSetting("FeedRefresh:Every", "00:00:00");
        builder.ConfigureTestServices(services => services.AddSingleton<TimeProvider>(new FakeTimeProvider(KeptBatch.LookedAt(version))));
    }
}

using System.Net;
using System.Net.Http.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Time.Testing;
using WitherAdvisor.Api.Pages.Batches;
using WitherAdvisor.Api.Pages.Forms;
using Xunit;

namespace WitherAdvisor.Api.Tests.Pages;

/// <summary>The service on a store of its own, with an invented site of two troughs, seen through a browser without scripts.</summary>
public sealed class PageHost : IDisposable
{
    public const string NewBatch = "/sites/invented-hill/batches/new";
    public const string NewReading = "/sites/invented-hill/weather/new";

    private readonly TemporaryFolder folder = new();
    private readonly WebApplicationFactory<Program> factory;

    /// <param name="further">What a test wants otherwise.</param>
    public PageHost(Action<IServiceCollection>? further = null)
    {
        factory = new WebApplicationFactory<Program>().WithWebHostBuilder(host => host
            .UseSetting("Logging:LogLevel:Default", "Error")
            .UseSetting("Demo:OnNewDatabase", "false")
            .UseSetting("Store:DatabasePath", folder.File("pages.db"))
            .ConfigureServices(services => services.Replace(ServiceDescriptor.Singleton<TimeProvider>(Clock)))
            .ConfigureTestServices(further ?? (_ => { })));
        Browser = factory.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });
        Browser.Timeout = Patience.Longest;
    }

    public FakeTimeProvider Clock { get; } = new(Sample.LoadedAt);

    /// <summary>Keeps cookies, follows no redirect.</summary>
    public HttpClient Browser { get; }

    public IServiceProvider Services => factory.Services;

    public async Task<PageHost> WithSite()
    {
        CancellationToken cancel = TestContext.Current.CancellationToken;
        (await Browser.PutAsJsonAsync("/v1/sites/invented-hill", new { name = "Invented Hill", elevation_m = 1500, latitude_deg = 6.9, longitude_deg = 80.7, time_zone = "Asia/Colombo" }, cancel)).EnsureSuccessStatusCode();
        foreach (string trough in new[] { "t1", "t2" })
        {
            (await Browser.PutAsJsonAsync($"/v1/sites/invented-hill/troughs/{trough}", new { name = "Trough " + trough[1..], area_m2 = 42 }, cancel)).EnsureSuccessStatusCode();
        }

        return this;
    }

    public async Task<string> Page(string address)
    {
        using HttpResponseMessage answer = await Browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>Opens a page, fills in its form and sends it, hidden fields and all.</summary>
    public async Task<HttpResponseMessage> Send(string page, string target, params (string Field, string Typed)[] typed)
    {
        Dictionary<string, string> fields = new(StringComparer.Ordinal);
        foreach (Match hidden in Regex.Matches(await Page(page), "<input type=\"hidden\" name=\"(?<name>[^\"]+)\" value=\"(?<value>[^\"]*)\"", RegexOptions.NonBacktracking))
        {
            fields[hidden.Groups["name"].Value] = WebUtility.HtmlDecode(hidden.Groups["value"].Value);
        }

        foreach ((string field, string text) in typed)
        {
            fields[field] = text;
        }

        return await Browser.PostAsync(new Uri(target, UriKind.Relative), new FormUrlEncodedContent(fields), TestContext.Current.CancellationToken);
    }

    /// <summary>Opens a page and sends the form on it that takes a file.</summary>
    public async Task<HttpResponseMessage> SendFile(string page, string file, params (string Field, string Typed)[] typed)
    {
        Match token = Regex.Match(await Page(page), "name=\"(?<name>__RequestVerificationToken)\" value=\"(?<value>[^\"]*)\"", RegexOptions.NonBacktracking);
        using MultipartFormDataContent form = new() { { new ByteArrayContent(System.Text.Encoding.UTF8.GetBytes(file)), "file", "invented.csv" } };
        foreach ((string field, string text) in typed.Append((token.Groups["name"].Value, token.Groups["value"].Value)))
        {
            form.Add(new StringContent(text), field);
        }

        return await Browser.PostAsync(new Uri(page, UriKind.Relative), form, TestContext.Current.CancellationToken);
    }

    /// <summary>A batch as it is entered when nothing else is said.</summary>
    public static (string Field, string Typed)[] Batch(params (string Field, string Typed)[] changes) =>
    [
        .. new Dictionary<string, string>(StringComparer.Ordinal)
        {
            [BatchForm.Trough] = "t2",
            [BatchForm.Division] = "Lower division",
            [BatchForm.Field] = "Field 7",
            [TimeFields.Date(BatchForm.PluckedFrom)] = "2026-07-14",
            [TimeFields.Time(BatchForm.PluckedFrom)] = "08:00",
            [TimeFields.Date(BatchForm.PluckedTo)] = "2026-07-14",
            [TimeFields.Time(BatchForm.PluckedTo)] = "14:30",
            [TimeFields.Date(BatchForm.LoadedAt)] = "2026-07-14",
            [TimeFields.Time(BatchForm.LoadedAt)] = "16:10",
            [BatchForm.GreenWeight] = "1176",
            [BatchForm.Feel] = "Wet",
            ["dry_bulb"] = "18",
            ["wet_bulb"] = "17.2",
            ["instrument"] = "Aspirated",
            ["rain_3_days"] = "61",
        }.Where(field => changes.All(change => change.Field != field.Key)).Select(field => (field.Key, field.Value)),
        .. changes,
    ];

    public void Dispose()
    {
        Browser.Dispose();
        factory.Dispose();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        folder.Dispose();
    }
}

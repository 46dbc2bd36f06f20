using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using WitherAdvisor.SyntheticSeasons;
using Xunit;

namespace WitherAdvisor.Process.Tests;

[Collection(Alone.Name)]
public sealed class RecalibrationCrashTests
{
    private const string Path = "/v1/sites/" + InventedLoft.Site;

    private static readonly Lazy<PastOfLoft> Past = new(() => PastOfLoft.Make(outcomes: 150, days: 400, seed: 11));

    [Fact]
    public async Task A_recalibration_that_is_killed_half_way_is_interrupted_and_can_be_run_again()
    {
        using TemporaryFolder folder = new();
        string job;
        await using (RunningService service = new(folder.Path))
        {
            await Open(service);
            job = await Ask(service);
            while ((string?)(await Get(service, job))["step"] is not "fitting")
            {
                Assert.NotEqual("done", (string?)(await Get(service, job))["status"]);
                await Task.Delay(1, TestContext.Current.CancellationToken);
            }
        }

        await using RunningService again = new(folder.Path);
        await again.Start();
        JsonNode interrupted = await Get(again, job);
        Assert.Equal(("interrupted", "fitting", null), ((string?)interrupted["status"], (string?)interrupted["step"], (string?)interrupted["proposal"]));
        Assert.Single((await Get(again, Path + "/coefficient-sets"))["sets"]!.AsArray());

        JsonNode done = await Ended(again, await Ask(again));

        Assert.Equal(("done", "learned-2"), ((string?)done["status"], (string?)done["proposal"]));
    }

    [Fact]
    public async Task Killed_while_sets_are_adopted_the_service_stands_by_one_of_them_whole()
    {
        CancellationToken cancel = TestContext.Current.CancellationToken;
        string[] names = ["first", "second"];
        using TemporaryFolder folder = new();
        int told = 0;
        Task adopting;
        await using (RunningService service = new(folder.Path))
        {
            await service.Start();
            await new InventedLoft(service).Tell();
            foreach (string name in names)
            {
                await Send(service, HttpMethod.Put, $"{Path}/coefficient-sets/{name}", """{"cuticular_conductance_mm_per_s": 1.2}""", HttpStatusCode.Created);
            }

            adopting = Task.Run(
                async () =>
                {
                    for (int turn = 0; true; turn++)
                    {
                        await Send(service, HttpMethod.Post, $"{Path}/coefficient-sets/{names[turn % 2]}/adopt", $$"""{"reason": "turn {{turn}}"}""", HttpStatusCode.OK);
                        Interlocked.Exchange(ref told, turn + 1);
                    }
                },
                cancel);
            while (Volatile.Read(ref told) < 20)
            {
                Assert.False(adopting.IsCompleted);
                await Task.Delay(1, cancel);
            }
        }

        await Assert.ThrowsAnyAsync<Exception>(() => adopting);

        await using RunningService again = new(folder.Path);
        await again.Start();
        JsonNode sets = await Get(again, Path + "/coefficient-sets");
        JsonArray adoptions = sets["adoptions"]!.AsArray();
        // Whatever was answered for is kept; of the one under way all or nothing.
        Assert.InRange(adoptions.Count, told, told + 1);
        Assert.Equal(
            Enumerable.Range(0, adoptions.Count).Reverse().Select(turn => (names[turn % 2], $"turn {turn}")),
            adoptions.Select(one => ((string)one!["set"]!, (string)one["reason"]!)));
        Assert.Equal(names[(adoptions.Count - 1) % 2], (string?)sets["adopted"]);
        JsonNode taken = await Send(again, HttpMethod.Post, Path + "/batches", InventedLoft.Batch("rain-wet").ToJsonString(), HttpStatusCode.Created);
        Assert.Equal((string?)sets["adopted"], (string?)taken["kept"]!["advice"]!["coefficient_set"]);
    }

    /// <summary>A site of the past of an invented loft.</summary>
    private static async Task Open(RunningService service)
    {
        await service.Start();
        await new InventedLoft(service).Tell();
        await Send(service, HttpMethod.Put, Path + "/troughs/trough-1", $$"""{"name": "Trough 1", "area_m2": {{PastOfLoft.AreaM2}}}""", HttpStatusCode.OK);
        foreach (string weather in Past.Value.WeatherCsv)
        {
            await Send(service, HttpMethod.Post, Path + "/weather?kind=observed", weather, HttpStatusCode.OK, "text/csv");
        }

        await Send(service, HttpMethod.Post, Path + "/outcomes/import?mode=take&odd=confirm", Past.Value.LogCsv, HttpStatusCode.OK, "text/csv");
    }

    private static async Task<string> Ask(RunningService service) =>
        $"{Path}/recalibrations/{(await Send(service, HttpMethod.Post, Path + "/recalibrations", "", HttpStatusCode.Accepted))["id"]}";

    private static async Task<JsonNode> Ended(RunningService service, string job)
    {
        while (true)
        {
            JsonNode now = await Get(service, job);
            if ((string?)now["status"] is not ("queued" or "running"))
            {
                return now;
            }

            await Task.Delay(50, TestContext.Current.CancellationToken);
        }
    }

    private static async Task<JsonNode> Get(RunningService service, string path) =>
        JsonNode.Parse(await service.Http.GetStringAsync(new Uri(path, UriKind.Relative), TestContext.Current.CancellationToken))!;

    private static async Task<JsonNode> Send(
        RunningService service, HttpMethod method, string path, string body, HttpStatusCode wanted, string mediaType = "application/json")
    {
        using HttpRequestMessage request = new(method, path) { Content = new StringContent(body, Encoding.UTF8, mediaType) };
        using HttpResponseMessage answer = await service.Http.SendAsync(request, TestContext.Current.CancellationToken);
        string text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(answer.StatusCode == wanted, $"{method} {path}: {answer.StatusCode} {text}");
        return JsonNode.Parse(text)!;
    }
}

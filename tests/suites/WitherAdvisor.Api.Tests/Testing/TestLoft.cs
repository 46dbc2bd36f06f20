using System.Text.Json.Nodes;

namespace WitherAdvisor.Api.Tests.Testing;

/// <summary>A site of a test's own, with one trough.</summary>
internal sealed class TestLoft
{
    private readonly Caller caller;

    public TestLoft(Caller caller)
    {
        this.caller = caller;
        UnloadedBatch = new(() => Unloaded());
    }

    /// <summary>One batch off its trough, for tests that do not mind what was entered for it.</summary>
    public Lazy<Task<string>> UnloadedBatch { get; }

    public string Site { get; } = "loft-" + Guid.NewGuid().ToString("N")[..12];

    public string Path => "/v1/sites/" + Site;

    public Caller Caller => caller;

    public static Task<TestLoft> Open(RunningService service) => Open(service.Caller);

    public static async Task<TestLoft> Open(Caller caller)
    {
        TestLoft loft = new(caller);
        (await loft.Caller.Put(loft.Path, Bodies.Site())).Expect(201);
        await loft.AddTrough("trough-1");
        return loft;
    }

    public async Task AddTrough(string trough) =>
        (await caller.Put($"{Path}/troughs/{trough}", Bodies.Trough())).Expect(201);

    public async Task<Reply> Observe(JsonArray readings) =>
        (await caller.Post(Path + "/weather?kind=observed", readings)).Expect(200);

    /// <summary>Takes in a batch and answers with it, its warnings and its advice.</summary>
    public async Task<JsonNode> Take(JsonObject batch) =>
        (await caller.Post(Path + "/batches", batch)).Expect(201).Json;

    public Task<JsonNode> Take() => Take(Bodies.BatchOn("trough-1"));

    /// <summary>Takes in a batch, unloads it after so many hours, and answers with its id.</summary>
    public async Task<string> Unloaded(double hours = 10, JsonObject? batch = null)
    {
        JsonNode taken = (await Take(batch ?? Bodies.BatchOn("trough-1")))["batch"]!;
        DateTimeOffset loadedAt = DateTimeOffset.Parse((string)taken["loaded_at"]!);
        JsonObject left = new() { ["unloaded_at"] = loadedAt.AddHours(hours).ToString("yyyy-MM-ddTHH:mm:sszzz") };
        (await caller.Post($"/v1/batches/{taken["id"]}/unloaded", left)).Expect(200);
        return (string)taken["id"]!;
    }

    public async Task NameScales() => (await caller.Put(Path + "/taster-scales", Bodies.Scales())).Expect(200);
}

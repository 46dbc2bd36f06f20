using System.Text.Json.Nodes;

namespace WitherAdvisor.Api.Tests.Testing;

/// <summary>A site of a test's own, with one trough.</summary>
internal sealed class Loft(Caller caller)
{
    public string Site { get; } = "loft-" + Guid.NewGuid().ToString("N")[..12];

    public string Path => "/v1/sites/" + Site;

    public Caller Caller => caller;

    public static async Task<Loft> Open(RunningService service)
    {
        Loft loft = new(service.Caller);
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
}

using System.Text.Json.Nodes;
using WitherAdvisor.Api.Advice;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Outcomes;
using WitherAdvisor.Api.Recalibration.Adopting;
using WitherAdvisor.Api.Simulations;
using WitherAdvisor.Api.Sites;
using WitherAdvisor.Api.Troughs;
using WitherAdvisor.Api.Weather;

namespace WitherAdvisor.Api.Tests.Testing;

/// <summary>A request that has a body: where it goes and of what type it is.</summary>
internal sealed record RequestForm(string Name, HttpMethod Method, Type Input, Func<TestLoft, Task<string>> Path)
{
    public static IReadOnlyList<RequestForm> All { get; } =
    [
        new("site", HttpMethod.Put, typeof(SiteRequest), At(loft => loft.Path + "-changed")),
        new("trough", HttpMethod.Put, typeof(TroughRequest), At(loft => loft.Path + "/troughs/trough-changed")),
        new("readings", HttpMethod.Post, typeof(IReadOnlyList<ReadingRequest>), At(loft => loft.Path + "/weather?kind=observed")),
        new("rain totals", HttpMethod.Post, typeof(IReadOnlyList<RainTotalRequest>), At(loft => loft.Path + "/rain-totals")),
        new("batch", HttpMethod.Post, typeof(BatchOnTroughRequest), At(loft => loft.Path + "/batches")),
        new("unloaded", HttpMethod.Post, typeof(UnloadedRequest), OfBatch("unloaded")),
        new("cancelled", HttpMethod.Post, typeof(CancelledRequest), OfBatch("cancelled")),
        new("outcome", HttpMethod.Put, typeof(OutcomeRequest), OfOutcome),
        new("taster scales", HttpMethod.Put, typeof(IReadOnlyList<TasterScaleRequest>), At(loft => loft.Path + "/taster-scales")),
        new("coefficient set", HttpMethod.Put, typeof(CoefficientsRequest), At(loft => $"{loft.Path}/coefficient-sets/by-hand-{Guid.NewGuid():N}"[..^4])),
        new("adoption", HttpMethod.Post, typeof(AdoptionRequest), OfSet),
        new("advice", HttpMethod.Post, typeof(StatelessAdviceRequest), At(_ => "/v1/advice")),
        new("simulation", HttpMethod.Post, typeof(PlanSimulationRequest), At(_ => "/v1/simulations")),
    ];

    public static RequestForm Of(string name) => All.Single(form => form.Name == name);

    public async Task<Reply> Send(TestLoft loft, string body) =>
        await loft.Caller.SendJson(Method, await Path(loft), body);

    private static Func<TestLoft, Task<string>> At(Func<TestLoft, string> path) => loft => Task.FromResult(path(loft));

    private static Func<TestLoft, Task<string>> OfBatch(string way) => async loft =>
    {
        JsonNode taken = await loft.Take();
        return $"/v1/batches/{taken["batch"]!["id"]}/{way}";
    };

    private static async Task<string> OfSet(TestLoft loft)
    {
        string set = $"{loft.Path}/coefficient-sets/set-{Guid.NewGuid().ToString("N")[..12]}";
        (await loft.Caller.Put(set, new JsonObject())).Expect(201);
        return set + "/adopt";
    }

    private static async Task<string> OfOutcome(TestLoft loft)
    {
        await loft.NameScales();
        return $"/v1/batches/{await loft.UnloadedBatch.Value}/outcome";
    }
}

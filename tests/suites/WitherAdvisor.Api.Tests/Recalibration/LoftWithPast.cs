using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Api.Tests.Recalibration;

/// <summary>A site of a test's own whose past was told through the interface, and what is asked of it.</summary>
internal sealed class LoftWithPast(TestLoft loft)
{
    public string Path => loft.Path;

    public Caller Caller => loft.Caller;

    public TestLoft Loft => loft;

    public static Task<LoftWithPast> Open(RunningService service, PastOfLoft past) => Open(service.Caller, past);

    public static async Task<LoftWithPast> Open(Caller caller, PastOfLoft past)
    {
        TestLoft loft = await TestLoft.Open(caller);
        JsonObject trough = Bodies.Trough();
        trough["area_m2"] = PastOfLoft.AreaM2;
        (await loft.Caller.Put(loft.Path + "/troughs/trough-1", trough)).Expect(200);
        foreach (string weather in past.WeatherCsv)
        {
            (await loft.Caller.PostText(loft.Path + "/weather?kind=observed", weather, "text/csv")).Expect(200);
        }

        (await loft.Caller.PostText(loft.Path + "/outcomes/import?mode=take&odd=confirm", past.LogCsv, "text/csv")).Expect(200);
        return new(loft);
    }

    /// <summary>Asks for a recalibration and waits for its end.</summary>
    public async Task<JsonNode> Recalibrate()
    {
        Reply asked = (await Caller.Post(Path + "/recalibrations")).Expect(202);
        return await Ended(asked.Headers.Location!.OriginalString);
    }

    public async Task<JsonNode> Ended(string path)
    {
        using CancellationTokenSource tooLong = new(Patience.Longest);
        while (true)
        {
            JsonNode job = (await Caller.Get(path)).Expect(200).Json;
            if ((string)job["status"]! is not ("queued" or "running"))
            {
                return job;
            }

            await Task.Delay(20, tooLong.Token);
        }
    }

    public async Task<JsonNode> Sets() => (await Caller.Get(Path + "/coefficient-sets")).Expect(200).Json;

    /// <summary>A set that a person states, in use from now on.</summary>
    public async Task AdoptByHand(string name, JsonObject coefficients)
    {
        (await Caller.Put($"{Path}/coefficient-sets/{name}", coefficients)).Expect(201);
        (await Caller.Post($"{Path}/coefficient-sets/{name}/adopt", new JsonObject())).Expect(200);
    }
}

using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using WitherAdvisor.InventedEstate;
using Xunit;

namespace WitherAdvisor.Process.Tests;

/// <summary>The invented estate, told to the running service through its interface as a factory's own system would.</summary>
public sealed class InventedLoft(RunningService service)
{
    public const string Site = "invented-hill";

    private static readonly IReadOnlyDictionary<string, string> Files = EstateFiles.Make(EstateFiles.Seed);

    /// <summary>The demo batches as the interface takes them, by name.</summary>
    public static JsonObject Batch(string id) => JsonNode.Parse(Files["batches.json"])!.AsArray()
        .Single(batch => batch!["id"]!.GetValue<string>() == id)!["batch"]!.DeepClone().AsObject();

    /// <summary>Puts in its site, its troughs and its wet spell.</summary>
    public async Task Tell()
    {
        await PutNamed("/v1/sites/", JsonNode.Parse(Files["site.json"])!.AsObject());
        foreach (JsonNode? trough in JsonNode.Parse(Files["troughs.json"])!.AsArray())
        {
            JsonObject body = trough!.AsObject();
            body.Remove("site");
            await PutNamed($"/v1/sites/{Site}/troughs/", body);
        }

        await Send(HttpMethod.Post, $"/v1/sites/{Site}/weather?kind=observed", Files["wet-spell.csv"], "text/csv");
        await Send(HttpMethod.Post, $"/v1/sites/{Site}/weather?kind=forecast", Files["rain-wet-forecast.csv"], "text/csv");
        await Send(HttpMethod.Post, $"/v1/sites/{Site}/rain-totals", Files["wet-spell-rain-totals.json"], "application/json");
    }

    private async Task PutNamed(string folder, JsonObject body)
    {
        string id = body["id"]!.GetValue<string>();
        body.Remove("id");
        await Send(HttpMethod.Put, folder + id, body.ToJsonString(), "application/json");
    }

    private async Task Send(HttpMethod method, string path, string body, string mediaType)
    {
        using HttpRequestMessage request = new(method, path)
        {
            Content = new StringContent(body, Encoding.UTF8, new MediaTypeHeaderValue(mediaType)),
        };
        using HttpResponseMessage answer = await service.Http.SendAsync(request);
        Assert.True(answer.IsSuccessStatusCode, $"{method} {path}: {answer.StatusCode} {await answer.Content.ReadAsStringAsync()}");
    }
}

using System.Net;
using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Xunit;

namespace WitherAdvisor.Process.Tests;

[Collection(Alone.Name)]
public sealed class RestartTests
{
    [Fact]
    public async Task Advice_outlives_the_service_being_killed_and_is_replayed_byte_for_byte()
    {
        CancellationToken cancel = TestContext.Current.CancellationToken;
        using TemporaryFolder folder = new();
        Uri adviceAddress;
        string given;
        await using (RunningService service = new(folder.Path))
        {
            await service.Start();
            await new InventedLoft(service).Tell();
            Uri batches = new($"/v1/sites/{InventedLoft.Site}/batches", UriKind.Relative);
            using HttpResponseMessage taken = await service.Http.PostAsJsonAsync(batches, InventedLoft.Batch("rain-wet"), cancel);
            Assert.Equal(HttpStatusCode.Created, taken.StatusCode);
            JsonNode answer = (await taken.Content.ReadFromJsonAsync<JsonNode>(cancel))!;
            adviceAddress = new Uri($"/v1/advice/{answer["kept"]!["id"]!.GetValue<string>()}", UriKind.Relative);
            given = await service.Http.GetStringAsync(adviceAddress, cancel);
        }

        await using RunningService again = new(folder.Path);
        await again.Start();

        Assert.Equal(given, await again.Http.GetStringAsync(adviceAddress, cancel));
        using HttpResponseMessage replay = await again.Http.PostAsync(new Uri($"{adviceAddress}/replay", UriKind.Relative), null, cancel);
        Assert.Equal("true", Assert.Single(replay.Headers.GetValues("Replay-Identical")));
        Assert.Equal(given, await replay.Content.ReadAsStringAsync(cancel));
    }
}

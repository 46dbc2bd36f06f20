using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Advice;

public sealed class KeptAdviceTests(RunningService service)
{
    [Fact]
    public async Task A_replay_from_the_kept_inputs_is_identical_byte_for_byte()
    {
        (TestLoft loft, JsonNode taken) = await Take();
        string path = "/v1/advice/" + taken["kept"]!["id"];
        Reply given = (await loft.Caller.Get(path)).Expect(200);
        Reply replayed = (await loft.Caller.Post(path + "/replay")).Expect(200);
        Assert.Equal(given.Text, replayed.Text);
        Assert.Equal("true", replayed.Headers.GetValues("Replay-Identical").Single());
    }

    [Fact]
    public async Task The_kept_inputs_sent_as_a_stateless_request_get_the_same_bytes()
    {
        (TestLoft loft, JsonNode taken) = await Take();
        string path = "/v1/advice/" + taken["kept"]!["id"];
        Reply input = (await loft.Caller.Get(path + "/request")).Expect(200);
        Reply stateless = (await loft.Caller.PostText("/v1/advice", input.Text)).Expect(200);
        Assert.Equal((await loft.Caller.Get(path)).Text, stateless.Text);
    }

    [Fact]
    public async Task The_advice_within_the_batch_is_the_kept_one_not_a_byte_changed()
    {
        TestLoft loft = await TestLoft.Open(service);
        Reply taken = (await loft.Caller.Post(loft.Path + "/batches", Bodies.BatchOn("trough-1"))).Expect(201);
        Reply kept = (await loft.Caller.Get("/v1/advice/" + taken.Json["kept"]!["id"])).Expect(200);
        Assert.Contains(kept.Text, taken.Text);
    }

    [Fact]
    public async Task Advised_again_with_newer_weather_it_changes_and_what_was_advised_stays()
    {
        (TestLoft loft, JsonNode taken) = await Take();
        string first = (string)taken["kept"]!["id"]!;
        string before = (await loft.Caller.Get("/v1/advice/" + first)).Text;

        JsonArray dry = Bodies.Readings(DateTimeOffset.Parse("2026-03-01T15:00:00+05:30"), 2);
        foreach (JsonNode? reading in dry)
        {
            reading!["relative_humidity_percent"] = 50;
        }

        service.Clock.Advance(TimeSpan.FromHours(2));
        await loft.Observe(dry);
        Reply again = (await loft.Caller.Post($"/v1/batches/{taken["batch"]!["id"]}/advice")).Expect(201);
        Assert.Equal("/v1/advice/" + again.Json["id"], again.Headers.Location!.ToString());
        Assert.NotEqual(before, again.Json["advice"]!.ToJsonString());
        Assert.Equal(before, (await loft.Caller.Get("/v1/advice/" + first)).Text);

        Reply replayed = await loft.Caller.Post($"/v1/advice/{first}/replay");
        Assert.Equal("true", replayed.Headers.GetValues("Replay-Identical").Single());
        JsonArray given = (await loft.Caller.Get($"/v1/batches/{taken["batch"]!["id"]}/advice")).Expect(200).Json.AsArray();
        Assert.Equal([(string)again.Json["id"]!, first], given.Select(advice => (string)advice!["id"]!));
    }

    [Fact]
    public async Task A_change_of_the_site_does_not_reach_back_into_kept_advice()
    {
        (TestLoft loft, JsonNode taken) = await Take();
        JsonObject moved = Bodies.Site();
        moved["elevation_m"] = 100;
        (await loft.Caller.Put(loft.Path, moved)).Expect(200);
        Reply replayed = await loft.Caller.Post($"/v1/advice/{taken["kept"]!["id"]}/replay");
        Assert.Equal("true", replayed.Headers.GetValues("Replay-Identical").Single());
    }

    [Fact]
    public async Task An_unknown_advice_cannot_be_replayed() =>
        (await service.Caller.Post("/v1/advice/none/replay")).ExpectProblem(404, "urn:witheradvisor:problem:unknown-advice");

    private async Task<(TestLoft TestLoft, JsonNode Taken)> Take()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.Observe(Bodies.Readings(DateTimeOffset.Parse("2026-03-01T13:00:00+05:30"), 24 * 8));
        return (loft, await loft.Take());
    }
}

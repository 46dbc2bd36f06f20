using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Batches;

public sealed class BatchEndpointsTests(RunningService service)
{
    [Fact]
    public async Task A_batch_is_kept_and_comes_back_with_its_advice()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.Observe(Bodies.Readings(DateTimeOffset.Parse("2026-03-01T13:00:00+05:30"), 24 * 8));
        Reply reply = (await loft.Caller.Post(loft.Path + "/batches", Bodies.BatchOn("trough-1"))).Expect(201);
        JsonNode batch = reply.Json["batch"]!;
        Assert.Equal("/v1/batches/" + batch["id"], reply.Headers.Location!.ToString());
        Assert.Equal("advised", (string?)reply.Json["kept"]!["advice"]!["status"]);
        Assert.Empty(reply.Json["warnings"]!.AsArray());
        Assert.Equal(batch.ToJsonString(), (await loft.Caller.Get("/v1/batches/" + batch["id"])).Expect(200).Json.ToJsonString());
    }

    [Fact]
    public async Task Batches_are_listed_newest_first_up_to_the_limit()
    {
        TestLoft loft = await TestLoft.Open(service);
        List<string> ids = [];
        for (int i = 0; i < 3; i++)
        {
            service.Clock.Advance(TimeSpan.FromSeconds(1));
            ids.Add((string)(await loft.Take())["batch"]!["id"]!);
        }

        JsonArray all = (await loft.Caller.Get(loft.Path + "/batches")).Expect(200).Json.AsArray();
        Assert.Equal(ids.AsEnumerable().Reverse(), all.Select(batch => (string)batch!["id"]!));
        Assert.Single((await loft.Caller.Get(loft.Path + "/batches?limit=1")).Expect(200).Json.AsArray());
    }

    [Theory]
    [InlineData("plucked_to", "2026-03-01T06:59:59+05:30", "plucked_to", "plucked_from")]
    [InlineData("loaded_at", "2026-03-01T11:29:59+05:30", "loaded_at", "plucked_to")]
    [InlineData("plucked_from", "2026-02-28T06:59:00+05:30", "loaded_at", "30 h after plucked_from")]
    [InlineData("ready_by", "2026-03-01T13:00:00+05:30", "ready_by", "loaded_at")]
    [InlineData("ready_by", "2026-03-03T13:00:01+05:30", "ready_by", "48 h")]
    public async Task Times_of_a_batch_have_to_follow_each_other(string field, string time, string named, string allowed)
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonObject batch = Bodies.BatchOn("trough-1");
        batch[field] = time;
        Reply reply = await loft.Caller.Post(loft.Path + "/batches", batch);
        Assert.Contains(allowed, reply.ExpectInvalid(named).Errors.First(error => error.Field == named).Allowed);
    }

    [Fact]
    public async Task More_leaf_than_the_trough_takes_is_refused_with_the_most_in_kg()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonObject batch = Bodies.BatchOn("trough-1");
        batch["green_weight_kg"] = 1470.5;
        var error = (await loft.Caller.Post(loft.Path + "/batches", batch)).ExpectInvalid("green_weight_kg").Errors[0];
        Assert.Equal("1470.5", error.Given);
        Assert.Contains("at most 1470 kg", error.Allowed);
    }

    [Fact]
    public async Task A_batch_leaves_its_trough_once()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonNode batch = (await loft.Take())["batch"]!;
        string path = $"/v1/batches/{batch["id"]}/unloaded";
        JsonObject before = new() { ["unloaded_at"] = "2026-03-01T12:59:59+05:30" };
        Assert.Contains("loaded_at", (await loft.Caller.Post(path, before)).ExpectInvalid("unloaded_at").Errors[0].Allowed);

        JsonObject after = new() { ["unloaded_at"] = "2026-03-01T23:10:00+05:30" };
        JsonNode left = (await loft.Caller.Post(path, after)).Expect(200).Json;
        Assert.Equal(
            DateTimeOffset.Parse("2026-03-01T23:10:00+05:30"), DateTimeOffset.Parse((string)left["unloaded_at"]!));
        (await loft.Caller.Post(path, after)).ExpectProblem(409, "urn:witheradvisor:problem:already-unloaded");
        (await loft.Caller.Post($"/v1/batches/{batch["id"]}/advice")).ExpectProblem(409, "urn:witheradvisor:problem:already-unloaded");
    }

    [Fact]
    public async Task A_batch_runs_until_it_is_cancelled_with_a_reason_and_cannot_end_otherwise_then()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonNode batch = (await loft.Take())["batch"]!;
        Assert.Equal("running", (string?)batch["status"]);
        string path = $"/v1/batches/{batch["id"]}";

        JsonObject cancelled = new() { ["cancelled_at"] = "2026-03-01T14:00:00+05:30", ["reason"] = "The fan failed." };
        JsonNode ended = (await loft.Caller.Post(path + "/cancelled", cancelled)).Expect(200).Json;

        Assert.Equal(("cancelled", "The fan failed."), ((string)ended["status"]!, (string)ended["end_reason"]!));
        JsonObject unloaded = new() { ["unloaded_at"] = "2026-03-01T23:10:00+05:30" };
        Reply refused = (await loft.Caller.Post(path + "/unloaded", unloaded)).ExpectProblem(409, "urn:witheradvisor:problem:already-cancelled");
        Assert.Contains("The fan failed.", (string)refused.Json["detail"]!);
        Assert.Equal(ended.ToJsonString(), (await loft.Caller.Get(path)).Expect(200).Json.ToJsonString());
    }

    [Fact]
    public async Task A_batch_is_mixed_into_another_of_its_site_that_still_runs()
    {
        TestLoft loft = await TestLoft.Open(service);
        string little = (string)(await loft.Take())["batch"]!["id"]!;
        string large = (string)(await loft.Take())["batch"]!["id"]!;
        string elsewhere = (string)(await (await TestLoft.Open(service)).Take())["batch"]!["id"]!;
        foreach (string wrong in new[] { little, elsewhere, "nothing" })
        {
            (await loft.Caller.Post($"/v1/batches/{little}/mixed", Mixed(wrong))).ExpectInvalid("into");
        }

        JsonNode ended = (await loft.Caller.Post($"/v1/batches/{little}/mixed", Mixed(large))).Expect(200).Json;

        Assert.Equal(("mixed", large), ((string)ended["status"]!, (string)ended["mixed_into"]!));
        (await loft.Caller.Post($"/v1/batches/{large}/mixed", Mixed(little))).ExpectProblem(409, "urn:witheradvisor:problem:already-mixed");
        (await loft.Caller.Post($"/v1/batches/{little}/advice")).ExpectProblem(409, "urn:witheradvisor:problem:already-mixed");
    }

    private static JsonObject Mixed(string into) =>
        new() { ["mixed_at"] = "2026-03-01T14:00:00+05:30", ["into"] = into, ["reason"] = "Too little leaf." };
}

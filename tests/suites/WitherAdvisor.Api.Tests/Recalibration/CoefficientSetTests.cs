using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.SyntheticSeasons;

namespace WitherAdvisor.Api.Tests.Recalibration;

public sealed class CoefficientSetTests(RunningService service)
{
    [Fact]
    public async Task A_site_has_the_defaults_until_something_else_is_adopted()
    {
        JsonNode sets = await new LoftWithPast(await TestLoft.Open(service)).Sets();

        Assert.Equal("defaults-1", (string?)sets["adopted"]);
        Assert.Empty(sets["adoptions"]!.AsArray());
        JsonNode only = Assert.Single(sets["sets"]!.AsArray())!;
        Assert.Equal(("defaults-1", "default", null), ((string?)only["name"], (string?)only["origin"], (string?)only["made_at"]));
        JsonArray catalogue = (await service.Caller.Get("/v1/coefficients")).Expect(200).Json["coefficients"]!.AsArray();
        foreach (JsonNode? coefficient in catalogue)
        {
            Assert.Equal((double)coefficient!["value"]!, (double)only["coefficients"]![(string)coefficient["name"]!]!);
        }
    }

    [Fact]
    public async Task A_set_stated_by_hand_makes_the_advice_once_adopted_and_its_spreads_live_on_in_a_replay()
    {
        LoftWithPast loft = new(await OpenWithWeather());
        await loft.AdoptByHand("sure-of-it", Spread(0.01));
        JsonNode sure = await loft.Loft.Take();
        await loft.AdoptByHand("unsure-of-it", Spread(0.5));
        JsonNode unsure = await loft.Loft.Take();

        Assert.Equal("sure-of-it", (string?)sure["kept"]!["advice"]!["coefficient_set"]);
        Assert.True(Band(unsure) > 1.3 * Band(sure), $"{Band(unsure)} h against {Band(sure)} h");
        foreach (JsonNode taken in new[] { sure, unsure })
        {
            string id = (string)taken["kept"]!["id"]!;
            Reply replay = (await service.Caller.Post($"/v1/advice/{id}/replay")).Expect(200);
            Assert.Equal("true", replay.Headers.GetValues("Replay-Identical").Single());
            // Sent by anybody as a request of its own, the kept input gives the same answer.
            string input = (await service.Caller.Get($"/v1/advice/{id}/request")).Expect(200).Text;
            Assert.Equal(replay.Text, (await service.Caller.PostText("/v1/advice", input)).Expect(200).Text);
        }
    }

    [Fact]
    public async Task Advising_again_takes_the_set_in_use_by_then()
    {
        LoftWithPast loft = new(await OpenWithWeather());
        JsonNode taken = await loft.Loft.Take();
        await loft.AdoptByHand("quick-leaf", new JsonObject { ["cuticular_conductance_mm_per_s"] = 1.3 });

        JsonNode again = (await service.Caller.Post($"/v1/batches/{taken["batch"]!["id"]}/advice")).Expect(201).Json;

        Assert.Equal("quick-leaf", (string?)again["advice"]!["coefficient_set"]);
        Assert.Equal("defaults-1", (string?)taken["kept"]!["advice"]!["coefficient_set"]);
    }

    [Fact]
    public async Task A_name_that_is_taken_or_the_services_own_is_refused()
    {
        LoftWithPast loft = new(await TestLoft.Open(service));
        (await loft.Caller.Put(loft.Path + "/coefficient-sets/mine", Spread(0.1))).Expect(201);

        foreach (string name in new[] { "mine", "learned-7", "defaults-1" })
        {
            (await loft.Caller.Put($"{loft.Path}/coefficient-sets/{name}", Spread(0.2))).ExpectProblem(409, "urn:witheradvisor:problem:name-taken");
        }

        Assert.Equal(["mine", "defaults-1"], (await loft.Sets())["sets"]!.AsArray().Select(set => (string)set!["name"]!));
        (await loft.Caller.Post(loft.Path + "/coefficient-sets/defaults-1/adopt", new JsonObject())).ExpectProblem(409, "urn:witheradvisor:problem:already-adopted");
    }

    [Fact]
    public async Task A_proposal_compared_with_a_set_no_longer_in_use_asks_for_a_reason()
    {
        LoftWithPast loft = await LoftWithPast.Open(service, PastOfLoft.Make(outcomes: 60, days: 200, seed: 7));
        JsonNode job = await loft.Recalibrate();
        Assert.Equal("better_than_current", (string?)job["report"]!["verdict"]!["kind"]);
        await loft.AdoptByHand("mine", Spread(0.1));

        Reply refused = await loft.Caller.Post($"{loft.Path}/recalibrations/{job["id"]}/adopt", new JsonObject());

        refused.ExpectProblem(409, "urn:witheradvisor:problem:not-shown-better");
        Assert.Contains("compared with 'defaults-1', but 'mine' is in use now", (string?)refused.Json["detail"]);
        (await loft.Caller.Post($"{loft.Path}/coefficient-sets/learned-1/adopt", new JsonObject())).Expect(409);
        Assert.Equal("mine", (string?)(await loft.Sets())["adopted"]);
    }

    private static JsonObject Spread(double fraction) => new() { ["spreads"] = new JsonObject { ["cuticular_conductance_fraction"] = fraction } };

    private static double Band(JsonNode taken)
    {
        JsonNode ready = taken["kept"]!["advice"]!["plan"]!["ready"]!;
        return (double)ready["p90_hours"]! - (double)ready["p10_hours"]!;
    }

    private async Task<TestLoft> OpenWithWeather()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.Observe(Bodies.Readings(DateTimeOffset.Parse("2026-03-01T13:00:00+05:30"), 24 * 8));
        return loft;
    }
}

using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Outcomes;

public sealed class OutcomeEndpointsTests(RunningService service)
{
    [Fact]
    public async Task An_outcome_is_kept_with_all_that_was_said_and_what_follows_from_it()
    {
        (TestLoft loft, string path) = await Prepare();
        JsonObject given = Bodies.Outcome();

        Reply first = (await loft.Caller.Put(path, given)).Expect(201);

        JsonNode kept = (await loft.Caller.Get(path)).Expect(200).Json;
        Assert.Equal(first.Json.ToJsonString(), kept.ToJsonString());
        foreach ((string name, JsonNode? value) in given)
        {
            if (name is not "air_set" and not "air_measured")
            {
                Assert.True(JsonNode.DeepEquals(value, kept[name]), $"{name}: {kept[name]}");
            }
        }

        Assert.Equal(19.2, (double)kept["air_measured"]![0]!["wet_bulb_c"]!);
        Assert.Equal(10, (double)kept["on_trough_hours"]!);
        // 560 of 1176 kg.
        Assert.Equal(47.62, (double)kept["outturn_percent"]!);
    }

    [Fact]
    public async Task Outturn_of_leaf_leaves_the_measured_water_on_it_out()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonObject batch = Bodies.BatchOn("trough-1");
        batch["surface_water"] = new JsonObject { ["measured_kg_per_kg"] = 0.12 };
        string path = $"/v1/batches/{await loft.Unloaded(batch: batch)}/outcome";

        JsonNode kept = (await loft.Caller.Put(path, new JsonObject { ["withered_weight_kg"] = 525 })).Expect(201).Json;

        // 525 / (1176 / 1.12) = 0.5.
        Assert.Equal(50, (double)kept["outturn_of_leaf_percent"]!);
    }

    [Fact]
    public async Task Nothing_need_be_known_and_what_is_not_stays_null()
    {
        (TestLoft loft, string path) = await Prepare();

        JsonNode kept = (await loft.Caller.Put(path, new JsonObject())).Expect(201).Json;

        Assert.Null(kept["withered_weight_kg"]);
        Assert.Null(kept["outturn_percent"]);
        Assert.Null(kept["turns"]);
        Assert.Null(kept["verdict"]);
    }

    [Fact]
    public async Task Changing_an_outcome_keeps_the_former_one_and_the_same_again_adds_none()
    {
        (TestLoft loft, string path) = await Prepare();
        JsonObject given = Bodies.Outcome();
        (await loft.Caller.Put(path, given)).Expect(201);
        service.Clock.Advance(TimeSpan.FromMinutes(1));
        given["verdict"] = "over";
        given["entered_by"] = "day maker";

        (await loft.Caller.Put(path, given)).Expect(200);
        (await loft.Caller.Put(path, given)).Expect(200);

        JsonArray history = (await loft.Caller.Get(path + "/history")).Expect(200).Json.AsArray();
        Assert.Equal(["day maker", "night maker"], history.Select(version => (string)version!["entered_by"]!));
        Assert.Equal(["over", "right"], history.Select(version => (string)version!["verdict"]!));
        Assert.Equal("over", (string)(await loft.Caller.Get(path)).Json["verdict"]!);
    }

    [Theory]
    [InlineData("withered_weight_kg", "1177", "withered_weight_kg", "at most green_weight_kg")]
    [InlineData("withered_weight_kg", "70", "withered_weight_kg", "more water cannot have left")]
    [InlineData("turns", "3", "turns", "turned_at_hours")]
    [InlineData("turned_at_hours", "[6, 3]", "turned_at_hours[1]", "after the one before")]
    [InlineData("turned_at_hours", "[3, 11]", "turned_at_hours[1]", "when the leaf was unloaded")]
    [InlineData("sample_weighings", """[{"hour": 12, "weight_percent": 70}]""", "sample_weighings[0].hour", "when the leaf was unloaded")]
    [InlineData("air_set", """[{"from_hour": 0, "dry_bulb_c": 20, "wet_bulb_c": 21}]""", "air_set[0].wet_bulb_c", "at most dry_bulb_c")]
    [InlineData("air_set", """[{"from_hour": 0, "dry_bulb_c": 25, "wet_bulb_c": 19, "hygrometric_difference_k": 7}]""", "air_set[0].hygrometric_difference_k", "minus wet_bulb_c")]
    [InlineData("marks", """[{"scale": "Aroma", "mark": 5}]""", "marks[0].scale", "Briskness, Colour")]
    [InlineData("marks", """[{"scale": "Briskness", "mark": 11}]""", "marks[0].mark", "0 to 10")]
    [InlineData("marks", """[{"scale": "Colour", "mark": 1}, {"scale": "Colour", "mark": 2}]""", "marks[1].scale", "each scale once")]
    public async Task What_cannot_be_is_refused_and_nothing_is_kept(string field, string value, string named, string allowed)
    {
        (TestLoft loft, string path) = await Prepare();
        JsonObject given = Bodies.Outcome();
        given[field] = JsonNode.Parse(value);

        Reply refused = await loft.Caller.Put(path, given);

        Assert.Contains(allowed, refused.ExpectInvalid(named).Errors.First(error => error.Field == named).Allowed);
        (await loft.Caller.Get(path)).ExpectProblem(404, "urn:witheradvisor:problem:unknown-outcome");
    }

    [Fact]
    public async Task Weights_are_held_against_the_moisture_that_was_measured()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonObject batch = Bodies.BatchOn("trough-1");
        batch["measured_moisture_wet_basis_percent"] = 75;
        batch["surface_water"] = new JsonObject { ["measured_kg_per_kg"] = 0.2 };
        string path = $"/v1/batches/{await loft.Unloaded(batch: batch)}/outcome";

        // 1176 / 1.2 × 0.25 = 245 kg of dry matter.
        Reply refused = await loft.Caller.Put(path, new JsonObject { ["withered_weight_kg"] = 245 });

        Assert.Contains("above 245 kg", refused.ExpectInvalid("withered_weight_kg").Errors[0].Allowed);
    }

    [Theory]
    [InlineData("withered_weight_kg", "1100", "outturn_unusual")]
    [InlineData("oven_moisture_wet_basis_percent", "81", "oven_unusual")]
    [InlineData("oven_moisture_wet_basis_percent", "84", "oven_against_weight")]
    [InlineData("air_set", """[{"from_hour": 0, "dry_bulb_c": 36}]""", "air_too_hot")]
    [InlineData("air_measured", """[{"from_hour": 0, "dry_bulb_c": 34, "wet_bulb_c": 18}]""", "difference_unusual")]
    [InlineData("layers", """{"bottom_moisture_wet_basis_percent": 50, "top_moisture_wet_basis_percent": 66}""", "layers_far_apart")]
    [InlineData("sample_weighings", """[{"hour": 2, "weight_percent": 70}, {"hour": 4, "weight_percent": 75}]""", "sample_gained_weight")]
    [InlineData("sample_weighings", """[{"hour": 2, "weight_percent": 30}]""", "sample_against_weight")]
    public async Task What_is_odd_is_asked_about_and_kept_once_confirmed(string field, string value, string code)
    {
        (TestLoft loft, string path) = await Prepare();
        JsonObject given = Bodies.Outcome();
        given[field] = JsonNode.Parse(value);

        Reply asked = (await loft.Caller.Put(path, given)).ExpectProblem(409, "urn:witheradvisor:problem:unusual-outcome");

        string[] codes = [.. asked.Json["warnings"]!.AsArray().Select(warning => (string)warning!["code"]!).Distinct()];
        Assert.Contains(code, codes);
        Assert.All(asked.Json["warnings"]!.AsArray(), warning => Assert.EndsWith(".", (string)warning!["text"]!, StringComparison.Ordinal));
        (await loft.Caller.Get(path)).ExpectProblem(404, "urn:witheradvisor:problem:unknown-outcome");

        given["confirm"] = new JsonArray([.. codes.Select(one => JsonValue.Create(one))]);
        JsonNode kept = (await loft.Caller.Put(path, given)).Expect(201).Json;
        Assert.Equal(codes.Order(), kept["confirm"]!.AsArray().Select(one => (string)one!).Order());
    }

    [Fact]
    public async Task A_short_night_is_asked_about()
    {
        TestLoft loft = await TestLoft.Open(service);
        string path = $"/v1/batches/{await loft.Unloaded(hours: 2)}/outcome";

        Reply asked = await loft.Caller.Put(path, new JsonObject());

        Assert.Equal("hours_unusual", (string?)asked.ExpectProblem(409, "urn:witheradvisor:problem:unusual-outcome").Json["warnings"]![0]!["code"]);
    }

    [Fact]
    public async Task Only_an_unloaded_batch_has_an_outcome()
    {
        TestLoft loft = await TestLoft.Open(service);
        string id = (string)(await loft.Take())["batch"]!["id"]!;
        (await loft.Caller.Put($"/v1/batches/{id}/outcome", new JsonObject())).ExpectProblem(409, "urn:witheradvisor:problem:still-on-trough");
        JsonObject cancelled = new() { ["cancelled_at"] = "2026-03-01T14:00:00+05:30", ["reason"] = "The fan failed." };
        (await loft.Caller.Post($"/v1/batches/{id}/cancelled", cancelled)).Expect(200);
        (await loft.Caller.Put($"/v1/batches/{id}/outcome", new JsonObject())).ExpectProblem(409, "urn:witheradvisor:problem:already-cancelled");
        (await loft.Caller.Put("/v1/batches/nothing/outcome", new JsonObject())).ExpectProblem(404, "urn:witheradvisor:problem:unknown-batch");
    }

    [Fact]
    public async Task The_scales_of_a_site_are_put_together_and_each_name_stands_once()
    {
        TestLoft loft = await TestLoft.Open(service);
        string path = loft.Path + "/taster-scales";
        Assert.Empty((await loft.Caller.Get(path)).Expect(200).Json.AsArray());
        (await loft.Caller.Put(path, Bodies.Scales())).Expect(200);
        Assert.True(JsonNode.DeepEquals(Bodies.Scales(), (await loft.Caller.Get(path)).Json));

        JsonArray twice = Bodies.Scales();
        twice[1]!["name"] = "Briskness";
        (await loft.Caller.Put(path, twice)).ExpectInvalid("[1].name");
        (await loft.Caller.Put("/v1/sites/nowhere/taster-scales", Bodies.Scales())).ExpectProblem(404, "urn:witheradvisor:problem:unknown-site");
    }

    private async Task<(TestLoft TestLoft, string Path)> Prepare()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.NameScales();
        return (loft, $"/v1/batches/{await loft.Unloaded()}/outcome");
    }
}

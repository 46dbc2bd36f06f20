using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Simulations;

public sealed class SimulationEndpointsTests(RunningService service)
{
    [Fact]
    public async Task A_fixed_plan_gets_its_curve_by_layer()
    {
        JsonNode answer = await Ask(Bodies.Simulation());
        JsonArray curve = answer["curve"]!.AsArray();
        Assert.Equal(0, (double)curve[0]!["hour"]!);
        Assert.Equal(12, (double)curve[^1]!["hour"]!);
        Assert.Equal("2026-03-02T01:00:00+05:30", (string?)curve[^1]!["at"]);
        Assert.Equal(1176, (double)curve[0]!["leaf_weight_kg"]!, 0.5);
        Assert.True((double)curve[^1]!["mean_moisture_wet_basis_percent"]! < 78);
        Assert.Equal((double)curve[^1]!["leaf_weight_kg"]! / 11.76, (double)answer["outturn_percent"]!, 0.1);
    }

    [Fact]
    public async Task The_ambient_air_can_be_blown_as_it_is()
    {
        JsonObject request = Bodies.Simulation();
        request["stages"] = new JsonArray(new JsonObject { ["to_hour"] = 12 });
        JsonNode answer = await Ask(request);
        Assert.Equal(0, (double)answer["heat_kwh"]!);
        Assert.All(answer["settings"]!.AsArray(), setting => Assert.Equal(0, (double)setting!["hot_air_share_percent"]!));
    }

    [Fact]
    public async Task A_hygrometric_difference_can_be_held()
    {
        JsonObject request = Bodies.Simulation();
        request["stages"] = new JsonArray(new JsonObject { ["to_hour"] = 6, ["hygrometric_difference_k"] = 5 });
        request["turn_hours"] = new JsonArray(3);
        Assert.All(
            (await Ask(request))["settings"]!.AsArray(),
            setting => Assert.Equal(5, (double)setting!["hygrometric_difference_k"]!, 0.02));
    }

    [Fact]
    public async Task A_plan_beyond_a_hard_limit_is_simulated_and_said_to_be_so()
    {
        JsonObject request = Bodies.Simulation();
        request["stages"]![0]!["plenum_dry_bulb_c"] = 40;
        Assert.Contains((await Ask(request))["notices"]!.AsArray(), notice => (string?)notice!["limit"] == "plenum_dry_bulb");
    }

    [Theory]
    [InlineData("""[{"to_hour": 6}, {"to_hour": 6}]""", "[1]", "stages[1].to_hour")]
    [InlineData("""[{"to_hour": 6, "plenum_dry_bulb_c": 25, "hygrometric_difference_k": 5}]""", "[1]", "stages[0].hygrometric_difference_k")]
    [InlineData("""[{"to_hour": 6}]""", "[2, 7]", "turn_hours[1]")]
    public async Task Stages_and_turns_have_to_fit_each_other(string stages, string turns, string field)
    {
        JsonObject request = Bodies.Simulation();
        request["stages"] = JsonNode.Parse(stages);
        request["turn_hours"] = JsonNode.Parse(turns);
        (await service.Caller.Post("/v1/simulations", request)).ExpectInvalid(field);
    }

    [Theory]
    [InlineData("""[{"time": "2026-03-01T13:00:00+05:30", "dry_bulb_c": 19}]""")]
    [InlineData("""[{"time": "2026-03-01T13:00:00+05:30", "relative_humidity_percent": 80}]""")]
    public async Task Air_needs_a_dry_bulb_and_a_humidity(string air)
    {
        JsonObject request = Bodies.Simulation();
        request["air"] = JsonNode.Parse(air);
        Assert.Contains("humidity", (await service.Caller.Post("/v1/simulations", request)).ExpectInvalid("air").Errors[0].Allowed);
    }

    private async Task<JsonNode> Ask(JsonObject request) => (await service.Caller.Post("/v1/simulations", request)).Expect(200).Json;
}

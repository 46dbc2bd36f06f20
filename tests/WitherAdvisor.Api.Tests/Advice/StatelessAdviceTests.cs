using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Advice;

public sealed class StatelessAdviceTests(RunningService service)
{
    [Fact]
    public async Task The_plan_comes_first_with_its_three_headline_things()
    {
        JsonObject answer = (await Ask(Bodies.Advice())).AsObject();
        Assert.Equal(["status", "plan"], answer.Take(2).Select(field => field.Key));
        JsonNode plan = answer["plan"]!;
        Assert.Equal(["set_now", "ready", "turning"], plan.AsObject().Take(3).Select(field => field.Key));
        double difference = (double)plan["set_now"]!["plenum_dry_bulb_c"]! - (double)plan["set_now"]!["plenum_wet_bulb_c"]!;
        Assert.Equal(difference, (double)plan["set_now"]!["hygrometric_difference_k"]!, 0.011);
        Assert.InRange((double)plan["set_now"]!["hot_air_share_percent"]!, 0, 100);
        Assert.True((double)plan["ready"]!["p10_hours"]! <= (double)plan["ready"]!["p90_hours"]!);
        Assert.Equal(plan["turning"]!["at_hours"]!.AsArray().Count, plan["turning"]!["at"]!.AsArray().Count);
    }

    [Fact]
    public async Task Times_carry_the_offset_of_the_site_though_the_request_was_in_UTC()
    {
        JsonObject request = Bodies.Advice();
        request["batch"]!["loaded_at"] = "2026-03-01T07:30:00Z";
        JsonNode plan = (await Ask(request))["plan"]!;
        Assert.Equal("2026-03-01T13:00:00+05:30", (string?)plan["set_now"]!["at"]);
    }

    [Fact]
    public async Task Times_follow_the_clocks_of_the_site_when_they_change_in_the_night()
    {
        // Clocks there went from 02:00 to 03:00 on 8 March 2026 (IANA tz database, zone America/New_York).
        JsonObject request = Bodies.Advice();
        request["site"]!["time_zone"] = "America/New_York";
        request["batch"]!["plucked_from"] = "2026-03-07T15:00:00-05:00";
        request["batch"]!["plucked_to"] = "2026-03-07T20:00:00-05:00";
        request["batch"]!["loaded_at"] = "2026-03-07T22:00:00-05:00";
        request["weather"] = Bodies.Readings(DateTimeOffset.Parse("2026-03-07T22:00:00-05:00"), 24 * 8);
        request["forecast"] = null;
        JsonArray settings = (await Ask(request))["plan"]!["settings"]!.AsArray();
        Assert.Equal("2026-03-08T01:00:00-05:00", At(settings, 3));
        Assert.Equal("2026-03-08T03:00:00-04:00", At(settings, 4));

        static string? At(JsonArray settings, double hour) =>
            (string?)settings.First(setting => (double)setting!["hour"]! == hour)!["at"];
    }

    [Fact]
    public async Task The_same_request_gets_the_same_bytes()
    {
        Reply first = await service.Caller.Post("/v1/advice", Bodies.Advice());
        Reply second = await service.Caller.Post("/v1/advice", Bodies.Advice());
        Assert.Equal(first.Expect(200).Text, second.Expect(200).Text);
    }

    [Fact]
    public async Task Without_a_forecast_the_answer_says_what_was_assumed()
    {
        JsonObject request = Bodies.Advice();
        request.Remove("forecast");
        JsonArray assumptions = (await Ask(request))["assumptions"]!.AsArray();
        Assert.NotEmpty(assumptions);
        Assert.All(assumptions, assumption => Assert.NotEmpty((string)assumption!["text"]!));
    }

    [Fact]
    public async Task Without_any_air_there_is_a_refusal_with_a_relief_and_not_a_guess()
    {
        JsonObject request = Bodies.Advice();
        request.Remove("forecast");
        request.Remove("weather");
        JsonNode answer = await Ask(request);
        Assert.Equal("cannot_advise", (string?)answer["status"]);
        Assert.Null(answer["plan"]);
        Assert.Equal("ambient_air", (string?)answer["refusal"]!["binding"]![0]!["limit"]);
        Assert.Equal("read_ambient_air", (string?)answer["refusal"]!["reliefs"]![0]!["relief"]);
    }

    [Fact]
    public async Task Measured_surface_water_wins_and_lengthens_the_wither_by_hours()
    {
        JsonNode dry = await Ask(WithSurfaceWater(0));
        JsonNode wet = await Ask(WithSurfaceWater(0.2));
        Assert.Equal("measured", (string?)wet["leaf"]!["surface_water"]!["origin"]);
        Assert.Equal(0.2, (double)wet["leaf"]!["surface_water"]!["value_kg_per_kg"]!);
        Assert.True(Hours(wet) >= Hours(dry) + 1, $"{Hours(wet)} h against {Hours(dry)} h");

        static double Hours(JsonNode answer) => (double)answer["plan"]!["ready"]!["stop_hours"]!;
    }

    [Fact]
    public async Task Elevation_changes_the_plan()
    {
        JsonObject low = Bodies.Advice();
        low["site"]!["elevation_m"] = 600;
        JsonObject high = Bodies.Advice();
        high["site"]!["elevation_m"] = 2000;
        Assert.NotEqual((await Ask(low))["plan"]!.ToJsonString(), (await Ask(high))["plan"]!.ToJsonString());
    }

    [Fact]
    public async Task Coefficients_of_the_caller_are_used_and_named()
    {
        JsonObject request = Bodies.Advice();
        request["coefficients"] = new JsonObject { ["set_name"] = "slow skin", ["cuticular_conductance_mm_per_s"] = 0.7 };
        JsonNode slow = await Ask(request);
        Assert.Equal("slow skin", (string?)slow["coefficient_set"]);
        JsonNode usual = await Ask(Bodies.Advice());
        Assert.Equal("defaults-1", (string?)usual["coefficient_set"]);
        Assert.True((double)slow["plan"]!["ready"]!["p50_hours"]! > (double)usual["plan"]!["ready"]!["p50_hours"]!);
    }

    [Fact]
    public async Task The_cautions_come_with_every_answer()
    {
        JsonArray cautions = (await Ask(Bodies.Advice()))["cautions"]!.AsArray();
        Assert.Contains(cautions, caution => ((string)caution!["text"]!).Contains("lock it off", StringComparison.Ordinal));
        Assert.Contains(cautions, caution => (string?)caution!["code"] == "hold_the_difference");
    }

    [Fact]
    public async Task Computed_numbers_are_rounded_to_the_decimals_of_their_unit()
    {
        JsonNode answer = await Ask(Bodies.Advice());
        foreach (JsonNode? setting in answer["plan"]!["settings"]!.AsArray())
        {
            foreach (string name in new[] { "plenum_dry_bulb_c", "hygrometric_difference_k", "hot_air_share_percent", "heat_kw" })
            {
                double value = (double)setting![name]!;
                Assert.Equal(Math.Round(value, 2), value);
            }
        }
    }

    [Theory]
    [InlineData("forecast", "2026-03-09T12:00:00+05:30", "forecast[0].time")]
    [InlineData("weather", "2026-03-09T12:00:00+05:30", "weather[0].time")]
    public async Task Weather_has_to_fit_the_time_of_loading(string list, string time, string field)
    {
        JsonObject request = Bodies.Advice();
        request[list] = new JsonArray(new JsonObject { ["time"] = time, ["dry_bulb_c"] = 19, ["dew_point_c"] = 16 });
        Assert.Contains("batch.loaded_at", (await service.Caller.Post("/v1/advice", request)).ExpectInvalid(field).Errors[0].Allowed);
    }

    [Fact]
    public async Task What_was_read_after_loading_wins_over_what_was_forecast()
    {
        JsonObject forecast = Bodies.Advice();
        JsonObject read = Bodies.Advice();
        JsonArray dry = Bodies.Readings(DateTimeOffset.Parse("2026-03-02T01:00:00+05:30"), 12);
        foreach (JsonNode? reading in dry)
        {
            reading!["relative_humidity_percent"] = 55;
            read["weather"]!.AsArray().Add(reading.DeepClone());
        }

        JsonNode plan = (await Ask(read))["plan"]!;
        Assert.Equal(55, (double)plan["settings"]![3]!["ambient_relative_humidity_percent"]!, 1.0);
        Assert.Equal(82, (double)(await Ask(forecast))["plan"]!["settings"]![3]!["ambient_relative_humidity_percent"]!, 1.0);
    }

    private static JsonObject WithSurfaceWater(double kgPerKg)
    {
        JsonObject request = Bodies.Advice();
        request["batch"]!["surface_water"] = new JsonObject { ["measured_kg_per_kg"] = kgPerKg };
        return request;
    }

    private async Task<JsonNode> Ask(JsonObject request) => (await service.Caller.Post("/v1/advice", request)).Expect(200).Json;
}

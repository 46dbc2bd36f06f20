using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Weather;

public sealed class WeatherEndpointsTests(RunningService service)
{
    private const string Day = "from=2026-03-01T00:00:00Z&to=2026-03-02T00:00:00Z";

    [Fact]
    public async Task Readings_come_back_as_they_were_sent_and_unknown_stays_null()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonNode sent = JsonNode.Parse("""
            [{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": 19.4, "relative_humidity_percent": 7, "rain_mm": 0},
             {"time": "2026-03-01T08:00:00Z", "wet_bulb_c": 16.1, "station_pressure_hpa": 845.6}]
            """)!;
        Assert.Equal("""{"received":2,"new":2}""", (await loft.Observe(sent.AsArray())).Text);

        JsonArray read = (await loft.Caller.Get($"{loft.Path}/weather?kind=observed&{Day}")).Expect(200).Json["readings"]!.AsArray();
        Assert.Equal(2, read.Count);
        Assert.Equal("7", read[0]!["relative_humidity_percent"]!.ToJsonString());
        Assert.Equal(0, (double)read[0]!["rain_mm"]!);
        Assert.Null(read[0]!["wet_bulb_c"]);
        Assert.Null(read[1]!["rain_mm"]);
        Assert.Equal(845.6, (double)read[1]!["station_pressure_hpa"]!, 9);
    }

    [Fact]
    public async Task Forecasts_are_kept_apart_from_what_was_read()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonArray forecast = Bodies.Readings(DateTimeOffset.Parse("2026-03-01T08:00:00Z"), 3);
        (await loft.Caller.Post(loft.Path + "/weather?kind=forecast", forecast)).Expect(200);
        Assert.Empty((await loft.Caller.Get($"{loft.Path}/weather?kind=observed&{Day}")).Json["readings"]!.AsArray());
        Assert.Equal(3, (await loft.Caller.Get($"{loft.Path}/weather?kind=forecast&{Day}")).Json["readings"]!.AsArray().Count);
    }

    [Fact]
    public async Task Sent_again_readings_are_not_new()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonArray readings = Bodies.Readings(DateTimeOffset.Parse("2026-03-01T08:00:00Z"), 3);
        await loft.Observe(readings);
        Assert.Equal("""{"received":3,"new":0}""", (await loft.Observe(readings)).Text);
    }

    [Fact]
    public async Task Where_one_reading_does_not_fit_none_is_kept()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonArray readings = Bodies.Readings(DateTimeOffset.Parse("2026-03-01T08:00:00Z"), 3);
        readings[2]!["rain_mm"] = -1;
        (await loft.Caller.Post(loft.Path + "/weather?kind=observed", readings)).ExpectInvalid("[2].rain_mm");
        Assert.Empty((await loft.Caller.Get($"{loft.Path}/weather?kind=observed&{Day}")).Json["readings"]!.AsArray());
    }

    [Theory]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": 19, "wet_bulb_c": 19.1}""", "[0].wet_bulb_c")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": 19, "dew_point_c": 19.3}""", "[0].dew_point_c")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z"}""", "[0].time")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": null}""", "[0].time")]
    public async Task A_reading_that_no_instrument_gives_is_refused(string reading, string field)
    {
        TestLoft loft = await TestLoft.Open(service);
        (await loft.Caller.PostText(loft.Path + "/weather?kind=observed", $"[{reading}]")).ExpectInvalid(field);
    }

    [Fact]
    public async Task Fog_that_rounding_put_above_saturation_is_saturated_air()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.Observe(JsonNode.Parse("""[{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": 19, "dew_point_c": 19.1}]""")!.AsArray());
        JsonNode read = (await loft.Caller.Get($"{loft.Path}/weather?kind=observed&{Day}")).Json["readings"]![0]!;
        Assert.Equal(19, (double)read["dew_point_c"]!);
    }

    [Fact]
    public async Task Two_readings_for_one_instant_are_refused_though_their_offsets_differ()
    {
        TestLoft loft = await TestLoft.Open(service);
        Reply reply = await loft.Caller.PostText(loft.Path + "/weather?kind=observed", """
            [{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": 19}, {"time": "2026-03-01T12:30:00+05:30", "dry_bulb_c": 20}]
            """);
        Assert.Contains("[0] has it too", reply.ExpectInvalid("[1].time").Errors[0].Allowed);
    }

    [Fact]
    public async Task An_empty_list_is_refused()
    {
        TestLoft loft = await TestLoft.Open(service);
        (await loft.Caller.PostText(loft.Path + "/weather?kind=observed", "[]")).ExpectInvalid("body");
    }

    [Fact]
    public async Task Rain_totals_are_kept_and_read_back_with_the_readings()
    {
        TestLoft loft = await TestLoft.Open(service);
        const string total = """{"from":"2026-02-28T01:30:00Z","to":"2026-03-01T01:30:00Z","rain_mm":12.5}""";
        Assert.Equal("""{"received":1}""", (await loft.Caller.PostText(loft.Path + "/rain-totals", $"[{total}]")).Expect(200).Text);
        JsonNode weather = (await loft.Caller.Get($"{loft.Path}/weather?kind=observed&{Day}")).Expect(200).Json;
        Assert.Equal(total, weather["rain_totals"]![0]!.ToJsonString());
    }

    [Theory]
    [InlineData("2026-02-28T07:00:00Z", "2026-02-28T07:00:00Z")]
    [InlineData("2026-02-28T07:00:00Z", "2026-02-27T07:00:00Z")]
    [InlineData("2026-02-28T07:00:00Z", "2026-08-27T07:00:00Z")]
    public async Task A_rain_total_covers_a_stretch_of_time(string from, string to)
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonArray totals = [new JsonObject { ["from"] = from, ["to"] = to, ["rain_mm"] = 3 }];
        (await loft.Caller.Post(loft.Path + "/rain-totals", totals)).ExpectInvalid("[0].to");
    }

    [Fact]
    public async Task Weather_needs_its_site()
    {
        JsonArray readings = Bodies.Readings(DateTimeOffset.Parse("2026-03-01T08:00:00Z"), 1);
        (await service.Caller.Post("/v1/sites/nowhere/weather?kind=observed", readings))
            .ExpectProblem(404, "urn:witheradvisor:problem:unknown-site");
    }
}

using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Http;

public sealed class StrictJsonTests(RunningService service)
{
    private const string Malformed = "urn:witheradvisor:problem:malformed-body";

    [Fact]
    public async Task An_unknown_member_is_refused_by_name()
    {
        JsonObject site = Bodies.Site();
        site["elevation_ft"] = 4921;
        Reply reply = await service.Caller.Put("/v1/sites/strict", site);
        Assert.Contains("elevation_m", reply.ExpectInvalid("elevation_ft").Errors[0].Allowed);
    }

    [Fact]
    public async Task A_member_in_another_case_is_unknown()
    {
        JsonObject site = Bodies.Site();
        site["Name"] = "twice";
        (await service.Caller.Put("/v1/sites/strict", site)).ExpectInvalid("Name");
    }

    [Fact]
    public async Task A_member_given_twice_is_refused()
    {
        string site = Bodies.Site().ToJsonString().Replace("\"name\":", "\"name\":\"first\",\"name\":");
        (await service.Caller.SendJson(HttpMethod.Put, "/v1/sites/strict", site)).ExpectInvalid("name");
    }

    [Theory]
    [InlineData("1")]
    [InlineData("\"1\"")]
    [InlineData("\"Fine\"")]
    [InlineData("\"fine, coarse\"")]
    [InlineData("\"finest\"")]
    public async Task A_choice_is_one_of_its_names_spelt_exactly(string given)
    {
        JsonObject batch = Bodies.BatchOn("trough-1");
        batch["label"]!["leaf_standard"] = JsonNode.Parse(given);
        Reply reply = await service.Caller.Post("/v1/sites/strict/batches", batch);
        Assert.Equal("one of: fine, medium, coarse", reply.ExpectInvalid("label.leaf_standard").Errors[0].Allowed);
    }

    [Theory]
    [InlineData("2026-03-01T13:00:00")]
    [InlineData("2026-03-01T13:00+05:30")]
    [InlineData("2026-03-01 13:00:00+05:30")]
    [InlineData("2026-03-01")]
    [InlineData("2026-02-30T13:00:00Z")]
    [InlineData("2026-03-01T13:00:00+0530")]
    [InlineData("2026-03-01T13:00:00+15:00")]
    [InlineData("2026-03-01T25:00:00Z")]
    [InlineData("2026-03-01T24:00:00Z")]
    [InlineData("2026-03-01t24:00:00z")]
    [InlineData("1949-12-31T13:00:00Z")]
    [InlineData("2101-03-01T13:00:00Z")]
    [InlineData("9999-12-31T23:59:59-14:00")]
    [InlineData("yesterday")]
    public async Task A_time_that_is_not_RFC_3339_with_offset_is_refused(string given)
    {
        JsonObject batch = Bodies.BatchOn("trough-1");
        batch["loaded_at"] = given;
        Reply reply = await service.Caller.Post("/v1/sites/strict/batches", batch);
        var error = reply.ExpectInvalid("loaded_at").Errors[0];
        Assert.Equal($"\"{given}\"", error.Given);
        Assert.Contains("offset", error.Allowed);
    }

    [Theory]
    [InlineData("2026-03-01T07:30:00Z")]
    [InlineData("2026-03-01T13:00:00.250+05:30")]
    public async Task A_time_in_UTC_or_with_fractions_is_taken(string given)
    {
        JsonObject advice = Bodies.Advice();
        advice["batch"]!["loaded_at"] = given;
        advice["forecast"] = null;
        (await service.Caller.Post("/v1/advice", advice)).Expect(200);
    }

    [Theory]
    [InlineData("{\"name\": \"A\",\n  \"elevation_m\": 15OO}", "elevation_m", "line 2")]
    [InlineData("{\"name\": \"A\",\n\n  \"style\": {\"plenum_ceiling_c\": 35,}}", "style", "line 3")]
    [InlineData("{\"name\": \"A\"", "name", "line 1")]
    [InlineData("", "Not JSON", "line 1")]
    [InlineData("// comment\n{}", "Not JSON", "line 1")]
    public async Task Broken_JSON_is_told_by_field_and_line_without_words_of_the_code(string body, string field, string line)
    {
        Reply reply = await service.Caller.SendJson(HttpMethod.Put, "/v1/sites/strict", body);
        string detail = (string)reply.ExpectProblem(400, Malformed).Json["detail"]!;
        Assert.Contains(field, detail);
        Assert.Contains(line, detail);
        Assert.DoesNotContain("System.", reply.Text);
        Assert.DoesNotContain("WitherAdvisor.Api", reply.Text);
    }

    [Fact]
    public async Task JSON_nested_too_deeply_is_refused()
    {
        string deep = string.Concat(Enumerable.Repeat("{\"style\":", 100)) + "1" + new string('}', 100);
        (await service.Caller.SendJson(HttpMethod.Put, "/v1/sites/strict", deep)).ExpectProblem(400, Malformed);
    }

    [Fact]
    public async Task A_body_that_is_not_UTF_8_is_refused() =>
        (await service.Caller.SendBytes(HttpMethod.Put, "/v1/sites/strict", [0x7b, 0xff, 0x7d])).ExpectProblem(400, Malformed);

    [Fact]
    public async Task Half_a_surrogate_pair_is_refused()
    {
        string site = Bodies.Site().ToJsonString().Replace("Invented Hill", "\\ud800");
        (await service.Caller.SendJson(HttpMethod.Put, "/v1/sites/strict", site)).ExpectProblem(400, Malformed);
    }

    [Fact]
    public async Task A_byte_order_mark_is_passed_over()
    {
        byte[] body = [0xef, 0xbb, 0xbf, .. System.Text.Encoding.UTF8.GetBytes(Bodies.Site().ToJsonString())];
        (await service.Caller.SendBytes(HttpMethod.Put, "/v1/sites/strict-bom", body)).Expect(201);
    }

    [Theory]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("12")]
    public async Task A_body_of_another_kind_is_refused(string body) =>
        (await service.Caller.SendJson(HttpMethod.Put, "/v1/sites/strict", body)).ExpectInvalid("body");

    [Fact]
    public async Task All_that_is_wrong_is_told_at_once_and_in_the_names_of_the_JSON()
    {
        JsonObject advice = Bodies.Advice();
        advice["site"]!["hot_air_c"] = 20;
        advice["batch"]!["green_weight_kg"] = "much";
        advice["weather"]![3]!["dry_bulb_c"] = 99;
        Reply reply = await service.Caller.Post("/v1/advice", advice);
        Assert.Equal(
            ["site.hot_air_c", "batch.green_weight_kg", "weather[3].dry_bulb_c"],
            reply.ExpectInvalid("site.hot_air_c").Errors.Select(error => error.Field));
    }

    [Theory]
    [InlineData(0.96)]
    [InlineData(100.04)]
    public async Task A_range_is_not_rounded_to_whole_numbers(double percent)
    {
        JsonObject advice = Bodies.Advice();
        advice["weather"]![0]!["relative_humidity_percent"] = percent;
        (await service.Caller.Post("/v1/advice", advice)).ExpectInvalid("weather[0].relative_humidity_percent");
    }
}

using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Sites;

public sealed class SiteEndpointsTests(RunningService service)
{
    [Fact]
    public async Task A_site_is_created_once_and_replaced_after()
    {
        TestLoft loft = new(service.Caller);
        Reply created = (await loft.Caller.Put(loft.Path, Bodies.Site())).Expect(201);
        Assert.Equal(loft.Path, created.Headers.Location!.ToString());

        JsonObject moved = Bodies.Site();
        moved["elevation_m"] = 600;
        (await loft.Caller.Put(loft.Path, moved)).Expect(200);
        Assert.Equal(600, (double)(await loft.Caller.Get(loft.Path)).Json["elevation_m"]!);
    }

    [Fact]
    public async Task A_site_answers_with_every_setting_stated()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonNode site = (await loft.Caller.Get(loft.Path)).Expect(200).Json;
        Assert.Equal(loft.Site, (string?)site["id"]);
        Assert.Equal(52.8, (double)site["hot_air_c"]!);
        Assert.Null(site["station_pressure_hpa"]);
        Assert.Equal("short", (string?)site["style"]!["name"]);
        Assert.Equal(7.2, (double)site["style"]!["wanted_hygrometric_difference_k"]!);
        Assert.All(site["style"]!.AsObject(), setting => Assert.NotNull(setting.Value));
    }

    [Fact]
    public async Task A_style_starts_from_its_name_and_keeps_what_was_set()
    {
        TestLoft loft = new(service.Caller);
        JsonObject site = Bodies.Site();
        site["station_pressure_hpa"] = 845.7;
        site["style"] = new JsonObject { ["name"] = "long", ["target_moisture_wet_basis_percent"] = 62.3, ["tolerated_spread_wet_basis_points"] = 7 };
        JsonNode answer = (await loft.Caller.Put(loft.Path, site)).Expect(201).Json;
        Assert.Equal(845.7, (double)answer["station_pressure_hpa"]!, 9);
        Assert.Equal(3, (double)answer["style"]!["wanted_hygrometric_difference_k"]!);
        Assert.Equal("62.3", answer["style"]!["target_moisture_wet_basis_percent"]!.ToJsonString());
        Assert.Equal("7", answer["style"]!["tolerated_spread_wet_basis_points"]!.ToJsonString());
        Assert.Equal(answer.ToJsonString(), (await loft.Caller.Get(loft.Path)).Json.ToJsonString());
    }

    [Fact]
    public async Task All_sites_are_listed()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonNode sites = (await loft.Caller.Get("/v1/sites")).Expect(200).Json;
        Assert.Contains(sites.AsArray(), site => (string?)site!["id"] == loft.Site);
    }

    [Theory]
    [InlineData("Mars/Olympus")]
    [InlineData("asia/colombo")]
    [InlineData("+05:30")]
    public async Task An_unknown_time_zone_is_refused(string zone)
    {
        JsonObject site = Bodies.Site();
        site["time_zone"] = zone;
        Assert.Contains("IANA", (await service.Caller.Put("/v1/sites/zone", site)).ExpectInvalid("time_zone").Errors[0].Allowed);
    }

    [Theory]
    [InlineData("Upper")]
    [InlineData("-a")]
    [InlineData("a_b")]
    [InlineData("%C3%A9")]
    [InlineData("a12345678901234567890123456789012345678901")]
    public async Task An_id_is_a_short_slug(string id) =>
        (await service.Caller.Put("/v1/sites/" + id, Bodies.Site())).ExpectInvalid("site");

    [Theory]
    [InlineData("shortest_since_plucking_hours", 12, "longest_since_plucking_hours", 10)]
    [InlineData("shortest_since_plucking_in_dry_windy_spell_hours", 12, "longest_since_plucking_hours", 10)]
    [InlineData("wanted_hygrometric_difference_k", 9, "hygrometric_difference_ceiling_k", 8)]
    public async Task Settings_of_a_style_have_to_fit_each_other(string field, double value, string other, double limit)
    {
        JsonObject site = Bodies.Site();
        site["style"] = new JsonObject { [field] = value, [other] = limit };
        var error = (await service.Caller.Put("/v1/sites/style", site)).ExpectInvalid("style." + field).Errors[0];
        Assert.Contains(other, error.Allowed);
    }
}

using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Troughs;

public sealed class TroughEndpointsTests(RunningService service)
{
    [Fact]
    public async Task A_trough_is_created_replaced_and_read_back_with_every_setting_stated()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonObject wide = Bodies.Trough();
        wide["area_m2"] = 60.5;
        wide["slowest_fan_share_percent"] = 60;
        (await loft.Caller.Put(loft.Path + "/troughs/trough-1", wide)).Expect(200);
        JsonNode trough = (await loft.Caller.Get(loft.Path + "/troughs/trough-1")).Expect(200).Json;
        Assert.Equal(
            $$"""{"id":"trough-1","site":"{{loft.Site}}","name":"Trough 1","area_m2":60.5,"airflow_m3_per_s_per_m2":0.2286,"slowest_fan_share_percent":60,"most_load_kg_per_m2":35,"heater_kw":null,"fan_kw":null}""",
            trough.ToJsonString());
    }

    [Fact]
    public async Task The_troughs_of_a_site_are_listed_by_id()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.AddTrough("a-trough");
        JsonArray troughs = (await loft.Caller.Get(loft.Path + "/troughs")).Expect(200).Json.AsArray();
        Assert.Equal(["a-trough", "trough-1"], troughs.Select(trough => (string?)trough!["id"]));
    }

    [Fact]
    public async Task A_trough_needs_its_site() =>
        (await service.Caller.Put("/v1/sites/nowhere/troughs/t", Bodies.Trough()))
            .ExpectProblem(404, "urn:witheradvisor:problem:unknown-site");

    [Fact]
    public async Task An_id_is_a_short_slug()
    {
        TestLoft loft = await TestLoft.Open(service);
        (await loft.Caller.Put(loft.Path + "/troughs/Trough%201", Bodies.Trough())).ExpectInvalid("trough");
    }
}

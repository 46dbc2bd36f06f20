using System.Text.Json.Nodes;
using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.Coefficients;

namespace WitherAdvisor.Api.Tests.Coefficients;

public sealed class CoefficientEndpointsTests(RunningService service)
{
    public static TheoryData<string> Settable => [.. CoefficientField.All.Select(known => known.Coefficient.Name)];

    [Fact]
    public async Task The_coefficients_come_with_value_range_status_and_source()
    {
        JsonNode answer = (await service.Caller.Get("/v1/coefficients")).Expect(200).Json;
        JsonNode skin = answer["coefficients"]!.AsArray().Single(one => (string?)one!["name"] == "cuticular_conductance_mm_per_s")!;
        Assert.Equal("mm/s", (string?)skin["unit"]);
        Assert.Equal(1, (double)skin["value"]!);
        Assert.Equal("fitted", (string?)skin["status"]);
        Assert.NotEmpty((string)skin["source"]!);
    }

    [Theory]
    [MemberData(nameof(Settable))]
    public void A_field_of_a_request_has_the_range_of_the_catalogue(string name)
    {
        CoefficientField field = CoefficientField.All.Single(field => field.Coefficient.Name == name);
        Assert.Equal(field.Range.Least, field.Shown(field.Coefficient.Low));
        Assert.Equal(field.Range.Most, field.Shown(field.Coefficient.High));
    }

    [Fact]
    public void Every_coefficient_but_those_that_hold_by_definition_can_be_set() => Assert.Equal(
        CoefficientCatalogue.All.Where(known => known.Status != CoefficientStatus.Definition).Select(known => known.Name),
        CoefficientField.All.Select(field => field.Coefficient.Name));

    [Fact]
    public async Task The_defaults_sent_as_they_were_answered_change_nothing_but_the_name()
    {
        JsonNode answer = (await service.Caller.Get("/v1/coefficients")).Expect(200).Json;
        JsonObject stated = new() { ["set_name"] = (string?)answer["set_name"] };
        foreach (JsonNode? one in answer["coefficients"]!.AsArray())
        {
            stated[(string)one!["name"]!] = one["value"]!.DeepClone();
        }

        JsonObject request = Bodies.Advice();
        request["coefficients"] = stated;
        Reply usual = (await service.Caller.Post("/v1/advice", Bodies.Advice())).Expect(200);
        Reply same = (await service.Caller.Post("/v1/advice", request)).Expect(200);
        Assert.Equal((double)usual.Json["plan"]!["ready"]!["p50_hours"]!, (double)same.Json["plan"]!["ready"]!["p50_hours"]!, 0.011);
    }
}

using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Advice;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Demo;
using WitherAdvisor.Api.ModelCard;
using WitherAdvisor.Api.Tests.Pages;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Intake;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Records;
using WitherAdvisor.Loft.Records.Opening;
using WitherAdvisor.Sensitivities;

namespace WitherAdvisor.Api.Tests.ModelCard;

public sealed class ModelCardEndpointTests(RunningService service)
{
    [Fact]
    public async Task Every_coefficient_comes_with_status_and_source_and_the_field_that_sets_it()
    {
        JsonArray coefficients = (await Card())["coefficients"]!.AsArray();

        Assert.Equal(CoefficientCatalogue.All.Select(one => one.Symbol), coefficients.Select(one => (string)one!["symbol"]!));
        JsonNode skin = coefficients.Single(one => (string?)one!["symbol"] == "g_0")!;
        Assert.Equal("cuticular_conductance_mm_per_s", (string?)skin["name"]);
        Assert.Equal(1, (double)skin["value"]!);
        Assert.Equal("fitted", (string?)skin["status"]);
        Assert.Null((string?)coefficients.Single(one => (string?)one!["status"] == "definition")!["name"]);
    }

    [Fact]
    public async Task Limits_and_ranges_are_those_that_the_service_goes_by()
    {
        JsonNode card = await Card();

        Assert.Equal(35, (double)One(card, "constants", "highest_plenum")["value"]!);
        JsonNode elevation = card["ranges"]!.AsArray().Single(range => (string?)range!["field"] == "site.elevation_m")!;
        Assert.Equal((-430d, 5000d, "m"), ((double)elevation["least"]!, (double)elevation["most"]!, (string)elevation["unit"]!));
        Assert.Contains(card["ranges"]!.AsArray(), range => (string?)range!["field"] == "weather[].rain_mm");
    }

    [Fact]
    public async Task Reliability_is_read_from_the_committed_table()
    {
        JsonNode reliability = (await Card())["reliability"]!;

        Assert.InRange((double)reliability["held_percent"]!, 77, 83);
        Assert.True((int)reliability["batches"]! >= 2000);
        Assert.True((double)reliability["held_if_further_percent"]! < (double)reliability["held_percent"]!);
    }

    [Fact]
    public async Task What_matters_most_comes_for_a_wet_batch_and_a_dry_one()
    {
        JsonNode[] batches = [.. (await Card())["sensitivities"]!.AsArray().Select(batch => batch!)];

        Assert.Equal(["rain-wet", "dry-windy"], batches.Select(batch => (string)batch["batch"]!));
        JsonNode wet = batches[0]["sensitivity"]!;
        JsonNode water = One(wet, "inputs", "surface_water");
        Assert.True((double)water["change_at_high_hours"]! > 0.1);
        Assert.Equal((double)wet["planned_hours"]! + (double)water["change_at_high_hours"]!, (double)water["at_high_hours"]!, 0.02);
        Assert.Equal("p10_to_p90", (string?)water["reach"]);
        Assert.Equal("input_error", (string?)One(wet, "inputs", "green_weight")["reach"]);
    }

    // The card asks without a database what the first start asks with one.
    [Fact]
    public async Task The_batches_of_the_card_are_advised_as_those_of_the_first_start()
    {
        using PageHost host = new();
        await using AsyncServiceScope scope = host.Services.CreateAsyncScope();
        IReadOnlyList<IntakeResult.Taken> taken = await scope.ServiceProvider.GetRequiredService<Demo.InventedEstate>()
            .LoadIntoNewDatabase(TestContext.Current.CancellationToken);

        foreach ((string trough, CardBatch batch) in new[] { "trough-1", "trough-2" }.Zip(CardBatch.All))
        {
            KeptAdvice kept = taken.Single(one => one.Batch.TroughId == trough).Advice;
            var advised = Assert.IsType<AdviceOutcome.Advised>(Assert.IsType<OpenedRecord.Readable>(AdviceRecords.Open(kept)).Record.Outcome);
            Assert.Equal(advised.ReadyHours, batch.Sensitivity.ReadyHours);
        }
    }

    [Fact]
    public async Task What_matters_most_for_a_batch_is_told_by_its_newest_advice()
    {
        TestLoft loft = await service.SharedLoft.Value;
        JsonNode taken = await loft.Take();
        string batch = (string)taken["batch"]!["id"]!;

        JsonNode answer = (await service.Caller.Get($"/v1/batches/{batch}/sensitivity")).Expect(200).Json;

        Assert.Equal((string?)taken["kept"]!["id"], (string?)answer["advice"]);
        Assert.Null((string?)answer["reason"]);
        Assert.True((double)One(answer["sensitivity"]!, "inputs", "tissue_moisture")["change_at_high_hours"]! > 0);
    }

    [Fact]
    public async Task A_batch_that_is_not_kept_has_nothing_that_matters() =>
        (await service.Caller.Get("/v1/batches/none/sensitivity")).ExpectProblem(404, "urn:witheradvisor:problem:unknown-batch");

    private static JsonNode One(JsonNode card, string list, string code) =>
        card[list]!.AsArray().Single(one => (string?)one!["code"] == code)!;

    private async Task<JsonNode> Card() => (await service.Caller.Get("/v1/model-card")).Expect(200).Json;
}

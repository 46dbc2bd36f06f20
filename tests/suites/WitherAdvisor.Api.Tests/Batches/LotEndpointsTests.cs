using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Batches;

/// <summary>A trough that gets 400 kg at noon, 400 at half past two and 376 at five.</summary>
public sealed class LotEndpointsTests(RunningService service)
{
    [Fact]
    public async Task Lots_stated_with_the_batch_make_one_plan_without_heat_until_the_last_is_on()
    {
        TestLoft loft = await Loft();
        JsonNode taken = await loft.Take(First(Lot("14:30", 400), Lot("17:00", 376)));

        JsonNode advice = taken["kept"]!["advice"]!;
        JsonNode loading = advice["plan"]!["stages"]![0]!;
        Assert.Equal("loading", (string)loading["stage"]!);
        Assert.Equal(5, (double)loading["to_hour"]!);
        Assert.All(
            advice["plan"]!["settings"]!.AsArray().Where(setting => (double)setting!["hour"]! < 5),
            setting => Assert.Equal(0, (double)setting!["heat_kw"]!));
        Assert.All(advice["plan"]!["turning"]!["at_hours"]!.AsArray(), turn => Assert.True((double)turn! > 5));
        Assert.Equal(1176, (double)taken["batch"]!["whole_weight_kg"]!);
        Assert.Equal(2, taken["batch"]!["lots"]!.AsArray().Count);
    }

    [Fact]
    public async Task Lots_added_in_any_order_give_the_plan_of_the_lots_stated_at_once()
    {
        TestLoft loft = await Loft();
        await loft.AddTrough("trough-2");
        JsonNode atOnce = await loft.Take(First(Lot("14:30", 400), Lot("17:00", 376)));
        JsonObject last = First();
        last["trough"] = "trough-2";
        Put(last, Lot("17:00", 376));
        string batch = (string)(await loft.Take(last))["batch"]!["id"]!;

        await Add(loft, batch, Lot("12:00", 400));
        JsonNode grown = await Add(loft, batch, Lot("14:30", 400));

        Assert.Equal(Plan(atOnce), Plan(grown));
        Assert.Equal("2026-03-01T06:30:00Z", (string)grown["batch"]!["loaded_at"]!);
        Assert.Equal(3, (await loft.Caller.Get($"/v1/batches/{batch}/advice")).Expect(200).Json.AsArray().Count);
    }

    [Fact]
    public async Task A_lot_that_comes_takes_the_place_of_the_expected_one()
    {
        TestLoft loft = await Loft();
        JsonObject expected = new() { ["loaded_at"] = At("17:00"), ["green_weight_kg"] = 500, ["status"] = "expected" };
        JsonNode taken = await loft.Take(First(Lot("14:30", 400), expected));
        Assert.Equal(1300, (double)taken["batch"]!["whole_weight_kg"]!);

        JsonNode grown = await Add(loft, (string)taken["batch"]!["id"]!, Lot("17:20", 376));

        Assert.Equal(1176, (double)grown["batch"]!["whole_weight_kg"]!);
        Assert.Contains("lots_expected", taken["kept"]!["advice"]!["assumptions"]!.AsArray().Select(one => (string)one!["code"]!));
        Assert.All(grown["batch"]!["lots"]!.AsArray(), lot => Assert.Equal("laid", (string)lot!["status"]!));
    }

    [Fact]
    public async Task Lots_that_come_at_once_are_all_kept()
    {
        TestLoft loft = await Loft();
        string batch = (string)(await loft.Take(First()))["batch"]!["id"]!;

        await Task.WhenAll(Enumerable.Range(1, 4).Select(i => Add(loft, batch, Lot($"1{i + 2}:00", 100 + i))));

        Assert.Equal(810, (double)(await loft.Caller.Get("/v1/batches/" + batch)).Expect(200).Json["whole_weight_kg"]!);
    }

    [Fact]
    public async Task Kept_inputs_of_lots_sent_again_give_the_same_bytes()
    {
        TestLoft loft = await Loft();
        JsonNode kept = (await loft.Take(First(Lot("14:30", 400), Lot("17:00", 376))))["kept"]!;
        Reply request = (await loft.Caller.Get($"/v1/advice/{kept["id"]}/request")).Expect(200);

        Reply replay = (await loft.Caller.Post($"/v1/advice/{kept["id"]}/replay", new JsonObject())).Expect(200);
        Reply again = (await loft.Caller.Post("/v1/advice", request.Json)).Expect(200);

        Assert.Equal("true", replay.Headers.GetValues("Replay-Identical").Single());
        Assert.Equal(replay.Text, again.Text);
    }

    [Theory]
    [InlineData("11:59", 400, "lots[0].loaded_at", "at or after loaded_at of the first lot")]
    [InlineData("14:30", 1100, "lots", "at most 1470 kg")]
    public async Task Nonsense_stated_with_the_batch_is_told_by_field(string at, double kg, string field, string allowed)
    {
        TestLoft loft = await Loft();
        JsonObject lot = Lot(at, kg);
        lot["plucked_from"] = At("08:00");
        lot["plucked_to"] = At("11:00");

        Reply reply = await loft.Caller.Post(loft.Path + "/batches", First(lot));

        Assert.Contains(allowed, reply.ExpectInvalid(field).Errors.First(error => error.Field == field).Allowed);
    }

    [Fact]
    public async Task A_lot_too_heavy_or_too_late_is_told_by_field()
    {
        TestLoft loft = await Loft();
        string lots = $"{loft.Path}/batches/{(await loft.Take(First()))["batch"]!["id"]}/lots";
        JsonObject late = Lot("14:30", 400);
        late["loaded_at"] = "2026-03-02T00:01:00+05:30";

        Assert.Contains("at most 1070 kg", (await loft.Caller.Post(lots, Lot("14:30", 1070.5))).ExpectInvalid("green_weight_kg").Errors[0].Allowed);
        Assert.Contains("within 12 h", (await loft.Caller.Post(lots, late)).ExpectInvalid("loaded_at").Errors[0].Allowed);
    }

    [Fact]
    public async Task A_batch_that_has_ended_or_is_of_another_site_takes_no_lot()
    {
        TestLoft loft = await Loft();
        TestLoft other = await Loft();
        string batch = await loft.Unloaded();

        (await loft.Caller.Post($"{loft.Path}/batches/{batch}/lots", Lot("14:30", 100))).Expect(409);
        (await loft.Caller.Post($"{other.Path}/batches/{batch}/lots", Lot("14:30", 100))).Expect(404);
    }

    [Fact]
    public async Task Leaf_of_another_kind_is_warned_of()
    {
        TestLoft loft = await Loft();
        string batch = (string)(await loft.Take(First()))["batch"]!["id"]!;
        JsonObject lot = Lot("14:30", 400);
        lot["label"] = new JsonObject { ["division"] = "Upper", ["field"] = "Field 8", ["bush_age"] = "young" };

        Assert.Equal(["mixes_bush_ages"], (await Add(loft, batch, lot))["warnings"]!.AsArray().Select(warning => (string)warning!["code"]!));
    }

    [Fact]
    public async Task Mixing_a_batch_into_another_adds_its_leaf_and_advises_again()
    {
        TestLoft loft = await Loft();
        string large = (string)(await loft.Take(First()))["batch"]!["id"]!;
        JsonObject later = First();
        Put(later, Lot("14:30", 300));
        string little = (string)(await loft.Take(later))["batch"]!["id"]!;
        service.Clock.Advance(TimeSpan.FromSeconds(1));
        JsonObject mixed = new() { ["mixed_at"] = At("15:00"), ["into"] = large, ["reason"] = "one wither" };

        (await loft.Caller.Post($"/v1/batches/{little}/mixed", mixed)).Expect(200);

        Assert.Equal(700, (double)(await loft.Caller.Get("/v1/batches/" + large)).Expect(200).Json["whole_weight_kg"]!);
        JsonArray advice = (await loft.Caller.Get($"/v1/batches/{large}/advice")).Expect(200).Json.AsArray();
        Assert.Equal(2, advice.Count);
        Assert.Equal(2.5, (double)advice[0]!["advice"]!["plan"]!["stages"]![0]!["to_hour"]!);
    }

    [Fact]
    public async Task The_page_lists_the_lots_and_tells_where_they_were_laid_on()
    {
        TestLoft loft = await Loft();
        string batch = (string)(await loft.Take(First(Lot("14:30", 400), Lot("17:00", 376))))["batch"]!["id"]!;

        string page = (await loft.Caller.Get("/batches/" + batch)).Expect(200).Text;

        Assert.Contains("Lots</h2>", page);
        Assert.Contains("More leaf laid on at 14:30, 17:00.", page);
        Assert.Contains("Loading to 17:00", page);
        Assert.Contains("Add a lot", page);
    }

    private async Task<TestLoft> Loft()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.Observe(Bodies.Readings(DateTimeOffset.Parse(At("12:00")), 24 * 8));
        return loft;
    }

    private static async Task<JsonNode> Add(TestLoft loft, string batch, JsonObject lot) =>
        (await loft.Caller.Post($"{loft.Path}/batches/{batch}/lots", lot)).Expect(201).Json;

    /// <summary>The plan's own bytes: what an answer says of batch and times of making is left out.</summary>
    private static string Plan(JsonNode taken) => taken["kept"]!["advice"]!.ToJsonString();

    private static JsonObject First(params JsonObject[] further)
    {
        JsonObject batch = Bodies.BatchOn("trough-1");
        Put(batch, Lot("12:00", 400));
        if (further.Length > 0)
        {
            batch["lots"] = new JsonArray([.. further]);
        }

        return batch;
    }

    private static void Put(JsonObject batch, JsonObject lot)
    {
        foreach ((string name, JsonNode? value) in lot)
        {
            batch[name] = value?.DeepClone();
        }
    }

    /// <summary>A lot plucked from four hours to half an hour before it is loaded.</summary>
    private static JsonObject Lot(string at, double kg)
    {
        DateTimeOffset loadedAt = DateTimeOffset.Parse(At(at));
        return new()
        {
            ["loaded_at"] = At(at),
            ["green_weight_kg"] = kg,
            ["plucked_from"] = loadedAt.AddHours(-4).ToString("yyyy-MM-ddTHH:mm:sszzz"),
            ["plucked_to"] = loadedAt.AddMinutes(-30).ToString("yyyy-MM-ddTHH:mm:sszzz"),
        };
    }

    private static string At(string clock) => $"2026-03-01T{clock}:00+05:30";
}

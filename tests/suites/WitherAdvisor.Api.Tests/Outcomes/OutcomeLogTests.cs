using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Outcomes;

/// <summary>Logs in and out: what a factory has on paper, and what the service writes itself.</summary>
public sealed class OutcomeLogTests(RunningService service)
{
    private const string Paper = """
        loaded_at,trough,division,field,cultivar,leaf_standard,green_weight_kg,on_trough_hours,air_measured_dry_bulb_c,air_measured_wet_bulb_c,turns,withered_weight_kg,oven_moisture_wet_basis_percent,verdict,marks,weather
        2025-06-01 17:30,trough-1,Upper,Field 7,Clone A,fine,1200,11.5,26.5,19.3,4,580,60,right,Briskness=7; Colour=1,wet
        2025-06-02 17:10,trough-1,Upper,Field 8,,coarse,1100,,,,,,,under,,
        """;

    private const string PaperPairs = """"
        loaded_at,trough,division,field,green_weight_kg,unloaded_at,air_measured_from_hours,air_measured_dry_bulb_c,air_measured_wet_bulb_c,turned_at_hours,faults,note
        2025-06-03 16:00,trough-1,Lower,Field 1,1000,2025-06-04 03:00,0; 4; 8,27; 26; 22,19; ; 18,3; 6,"red leaf; stalk","a note, with a comma and a ""quote"""
        """";

    [Fact]
    public async Task A_paper_log_is_taken_with_what_it_knows_and_nothing_made_up()
    {
        TestLoft loft = await Open();

        JsonNode taken = (await Import(loft, Paper, "take")).Expect(200).Json;

        Assert.Equal((true, 2, 2), ((bool)taken["kept"]!, (int)taken["rows"]!, (int)taken["new"]!));
        JsonArray batches = (await loft.Caller.Get(loft.Path + "/batches")).Json.AsArray();
        JsonNode first = batches.Single(batch => (string)batch!["label"]!["field"]! == "Field 7")!;
        Assert.Equal(("unloaded", true, "2025-06-01T12:00:00Z"), ((string)first["status"]!, (bool)first["plucking_assumed"]!, (string)first["loaded_at"]!));
        JsonNode outcome = (await loft.Caller.Get($"/v1/batches/{first["id"]}/outcome")).Expect(200).Json;
        Assert.Equal((11.5, 580.0, "right"), ((double)outcome["on_trough_hours"]!, (double)outcome["withered_weight_kg"]!, (string)outcome["verdict"]!));
        Assert.Equal((0.0, 26.5, 19.3), ((double)outcome["air_measured"]![0]!["from_hour"]!, (double)outcome["air_measured"]![0]!["dry_bulb_c"]!, (double)outcome["air_measured"]![0]!["wet_bulb_c"]!));
        Assert.Equal(1, (double)outcome["marks"]![1]!["mark"]!);
        Assert.Empty((await loft.Caller.Get($"/v1/batches/{first["id"]}/advice")).Expect(200).Json.AsArray());

        JsonNode second = batches.Single(batch => (string)batch!["label"]!["field"]! == "Field 8")!;
        Assert.Null(second["unloaded_at"]);
        Assert.Null(second["label"]!["cultivar"]);
        Assert.Null((await loft.Caller.Get($"/v1/batches/{second["id"]}/outcome")).Expect(200).Json["on_trough_hours"]);
    }

    [Fact]
    public async Task Several_readings_of_the_air_stand_in_one_cell()
    {
        TestLoft loft = await Open();
        (await Import(loft, PaperPairs, "take")).Expect(200);

        string id = (string)(await loft.Caller.Get(loft.Path + "/batches")).Json[0]!["id"]!;
        JsonNode outcome = (await loft.Caller.Get($"/v1/batches/{id}/outcome")).Expect(200).Json;
        Assert.Equal([0.0, 4, 8], outcome["air_measured"]!.AsArray().Select(air => (double)air!["from_hour"]!));
        Assert.Equal([19.0, null, 18], outcome["air_measured"]!.AsArray().Select(air => (double?)air!["wet_bulb_c"]));
        Assert.Equal(["red leaf", "stalk"], outcome["faults"]!.AsArray().Select(fault => (string)fault!));
        Assert.Equal("a note, with a comma and a \"quote\"", (string)outcome["note"]!);
        Assert.Equal(2, (int)outcome["turns"]!);
        Assert.Equal(11, (double)outcome["on_trough_hours"]!);
    }

    [Fact]
    public async Task A_preview_keeps_nothing_and_says_what_would_come_of_each_row()
    {
        TestLoft loft = await Open();
        (await Import(loft, Paper.Split('\n')[0] + "\n" + Paper.Split('\n')[1], "take")).Expect(200);
        string mixed = Paper + "\n2025-06-04 17:00,trough-9,Upper,Field 7,,,1200,11,26.5,19.3,4,1300,60,right,,\n2025-06-05 17:00,trough-1,Upper,Field 7,,,1200,2,26,19,4,580,60,right,,";

        JsonNode shown = (await Import(loft, mixed, "preview")).Expect(200).Json;

        Assert.Equal((false, 4, 1, 1, 1, 1), ((bool)shown["kept"]!, (int)shown["rows"]!, (int)shown["new"]!, (int)shown["already_there"]!, (int)shown["odd"]!, (int)shown["wrong"]!));
        JsonNode wrong = shown["report"]!.AsArray().Single(row => (int)row!["line"]! == 4)!;
        Assert.Equal(["trough", "withered_weight_kg"], wrong["errors"]!.AsArray().Select(error => (string)error!["field"]!));
        Assert.Contains("trough-1", (string)wrong["errors"]![0]!["allowed"]!);
        JsonNode odd = shown["report"]!.AsArray().Single(row => (int)row!["line"]! == 5)!;
        Assert.Equal("hours_unusual", (string)odd["warnings"]![0]!["code"]!);
        Assert.Single((await loft.Caller.Get(loft.Path + "/batches")).Json.AsArray());
    }

    [Fact]
    public async Task The_same_file_twice_adds_nothing()
    {
        TestLoft loft = await Open();
        (await Import(loft, Paper, "take")).Expect(200);
        string before = await Export(loft);

        JsonNode again = (await Import(loft, Paper, "take")).Expect(200).Json;

        Assert.Equal((false, 2), ((bool)again["kept"]!, (int)again["already_there"]!));
        Assert.Equal(before, await Export(loft));
    }

    [Fact]
    public async Task One_wrong_row_keeps_all_out_unless_the_good_ones_are_asked_for()
    {
        TestLoft loft = await Open();
        string file = Paper + "\n2025-06-04 17:00,trough-1,Upper,Field 7,,,much,11,26.5,19.3,4,580,60,right,,";

        Reply refused = await Import(loft, file, "take");
        Assert.Equal("much", refused.ExpectInvalid("line 4, column green_weight_kg").Errors[0].Given!.Trim('"'));
        Assert.Empty((await loft.Caller.Get(loft.Path + "/batches")).Json.AsArray());

        JsonNode good = (await Import(loft, file, "take&keep=good_rows")).Expect(200).Json;
        Assert.Equal((true, 2, 1), ((bool)good["kept"]!, (int)good["new"]!, (int)good["wrong"]!));
        Assert.Equal(2, (await loft.Caller.Get(loft.Path + "/batches")).Json.AsArray().Count);
    }

    [Fact]
    public async Task An_odd_row_is_asked_about_and_taken_once_confirmed()
    {
        TestLoft loft = await Open();
        const string odd = "loaded_at,trough,division,field,green_weight_kg,on_trough_hours\n2025-06-01 17:30,trough-1,Upper,Field 7,1200,2";

        Reply asked = (await Import(loft, odd, "take")).ExpectProblem(409, "urn:witheradvisor:problem:unusual-outcome");
        Assert.Equal("line 2, unloaded_at", (string)asked.Json["warnings"]![0]!["field"]!);

        (await Import(loft, odd, "take&odd=confirm")).Expect(200);
        Assert.Contains(",hours_unusual,", await Export(loft));
    }

    [Fact]
    public async Task A_log_brings_the_outcome_of_a_batch_that_was_advised_on_here()
    {
        TestLoft loft = await Open();
        string id = (string)(await loft.Take())["batch"]!["id"]!;
        const string log = "loaded_at,trough,division,field,green_weight_kg,unloaded_at,withered_weight_kg\n2026-03-01 13:00,trough-1,Upper,Field 7,1176,2026-03-01 23:00,560";

        Assert.Equal(1, (int)(await Import(loft, log, "take")).Expect(200).Json["outcomes_added"]!);

        Assert.Equal("unloaded", (string)(await loft.Caller.Get($"/v1/batches/{id}")).Json["status"]!);
        Assert.Equal(560, (double)(await loft.Caller.Get($"/v1/batches/{id}/outcome")).Expect(200).Json["withered_weight_kg"]!);
        (await Import(loft, log.Replace(",560", ",570", StringComparison.Ordinal), "take")).ExpectInvalid("line 2, column withered_weight_kg");
        (await Import(loft, log.Replace("1176", "1175", StringComparison.Ordinal), "take")).ExpectInvalid("line 2, column green_weight_kg");
    }

    [Theory]
    [InlineData("loaded_at,trough,division,field\n", "line 1, column green_weight_kg")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg,wither\n", "line 1")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg,field\n", "line 1")]
    [InlineData("", "line 1, column trough")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg\n2025-06-01 17:30,trough-1,Upper,Field 7", "line 2, column row")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg\nyesterday,trough-1,Upper,Field 7,1200", "line 2, column loaded_at")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg,on_trough_hours\n2025-06-01 17:30,trough-1,Upper,Field 7,1200,-1", "line 2, column on_trough_hours")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg,unloaded_at\n2025-06-01 17:30,trough-1,Upper,Field 7,1200,2025-06-01 17:00", "line 2, column unloaded_at")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg,outturn_percent\n2025-06-01 17:30,trough-1,Upper,Field 7,1200,48", "line 2, column outturn_percent")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg,withered_weight_kg,outturn_percent\n2025-06-01 17:30,trough-1,Upper,Field 7,1000,500,48", "line 2, column outturn_percent")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg,plucked_from\n2025-06-01 17:30,trough-1,Upper,Field 7,1200,2025-06-01 07:00", "line 2, column plucked_to")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg,marks\n2025-06-01 17:30,trough-1,Upper,Field 7,1200,good", "line 2, column marks")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg,air_set_from_hours,air_set_dry_bulb_c\n2025-06-01 17:30,trough-1,Upper,Field 7,1200,0;3,25", "line 2, column air_set_dry_bulb_c")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg,turned_at_hours\n2025-06-01 17:30,trough-1,Upper,Field 7,1200,3;e", "line 2, column turned_at_hours")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg,site\n2025-06-01 17:30,trough-1,Upper,Field 7,1200,elsewhere", "line 2, column site")]
    [InlineData("loaded_at,trough,division,field,green_weight_kg\n2025-06-01 17:30,trough-1,Upper,Field 7,1200\n2025-06-01 17:30,trough-1,Upper,Field 7,1200", "line 3, column loaded_at")]
    public async Task What_does_not_fit_is_named_by_line_and_column(string csv, string field)
    {
        TestLoft loft = await Open();
        (await Import(loft, csv, "take")).ExpectInvalid(field);
        Assert.Empty((await loft.Caller.Get(loft.Path + "/batches")).Json.AsArray());
    }

    [Fact]
    public async Task What_is_exported_is_imported_into_an_empty_database_without_loss()
    {
        TestLoft loft = await Nasty();
        string exported = await Export(loft);
        Assert.Equal(6, exported.Split("\r\n").Length);

        await using RunningService empty = new();
        Caller caller = empty.Caller;
        (await caller.Put(loft.Path, Bodies.Site())).Expect(201);
        (await caller.Put(loft.Path + "/troughs/trough-1", Bodies.Trough())).Expect(201);
        (await caller.Put(loft.Path + "/taster-scales", Bodies.Scales())).Expect(200);
        Assert.Equal(4, (int)(await caller.PostText(loft.Path + "/outcomes/import?mode=take", exported, "text/csv")).Expect(200).Json["new"]!);

        Assert.Equal(exported, (await caller.Get(loft.Path + "/outcomes/export?format=csv")).Expect(200).Text);
        JsonNode again = (await caller.PostText(loft.Path + "/outcomes/import?mode=take", exported, "text/csv")).Expect(200).Json;
        Assert.Equal((false, 4), ((bool)again["kept"]!, (int)again["already_there"]!));
        foreach (JsonNode? batch in (await loft.Caller.Get(loft.Path + "/batches")).Json.AsArray())
        {
            string path = $"/v1/batches/{batch!["id"]}";
            Assert.Equal(batch.ToJsonString(), (await caller.Get(path)).Expect(200).Json.ToJsonString());
            Assert.Equal((await loft.Caller.Get(path + "/outcome")).Text, (await caller.Get(path + "/outcome")).Text);
        }
    }

    [Fact]
    public async Task Formulas_are_guarded_in_texts_and_numbers_are_left_alone()
    {
        string exported = await Export(await Nasty());

        Assert.Contains(",'=HYPERLINK(1),", exported);
        Assert.Contains(",'@sum,", exported);
        Assert.Contains(",''quoted,", exported);
        Assert.Contains("Briskness=7.5;Colour=-1", exported);
        Assert.DoesNotContain(",=", exported);
        Assert.DoesNotContain("'-", exported);
    }

    [Fact]
    public async Task An_export_tells_the_advice_that_was_given_and_its_weather()
    {
        TestLoft loft = await Open();
        await loft.Observe(Bodies.Readings(DateTimeOffset.Parse("2026-03-01T13:00:00+05:30"), 24 * 8));
        string id = await loft.Unloaded();
        (await loft.Caller.Put($"/v1/batches/{id}/outcome", Bodies.Outcome())).Expect(201);
        JsonNode advice = (await loft.Caller.Get($"/v1/batches/{id}/advice")).Json[0]!;

        Dictionary<string, string> row = Rows(await Export(loft)).Single();

        Assert.Equal((string)advice["id"]!, row["advice_id"]);
        JsonNode answer = advice["advice"]!;
        Assert.Equal((string)answer["coefficient_set"]!, row["coefficient_set"]);
        Assert.Equal((string)answer["spell"]!["kind"]!, row["spell"]);
        Assert.Equal($"{(double)answer["plan"]!["ready"]!["stop_hours"]!}", row["advised_hours"]);
        Assert.Equal($"{(double)answer["plan"]!["ready"]!["p90_hours"]!}", row["ready_p90_hours"]);
        Assert.Equal($"{(double)answer["leaf"]!["tissue_moisture"]!["value_wet_basis_percent"]!}", row["tissue_moisture_wet_basis_percent"]);
        Assert.Equal($"{(double)answer["plan"]!["set_now"]!["hygrometric_difference_k"]!}", row["advised_hygrometric_difference_k"]);
        Assert.Equal("2026-03-01T13:00:00+05:30", row["loaded_at"]);
        Assert.Equal(("10", "560"), (row["on_trough_hours"], row["withered_weight_kg"]));
    }

    [Theory]
    [InlineData("from=2025-06-02T00:00:00%2B05:30", 1)]
    [InlineData("to=2025-06-02T00:00:00%2B05:30", 1)]
    [InlineData("cultivar=Clone%20A", 1)]
    [InlineData("spell=wet", 0)]
    [InlineData("cultivar=Clone%20A&from=2025-01-01T00:00:00Z", 1)]
    public async Task An_export_is_filtered(string filter, int rows)
    {
        TestLoft loft = await Open();
        (await Import(loft, Paper, "take")).Expect(200);
        Assert.Equal(rows, Rows((await loft.Caller.Get($"{loft.Path}/outcomes/export?format=csv&{filter}")).Expect(200).Text).Count);
    }

    [Fact]
    public async Task An_empty_log_is_a_header_and_an_unknown_site_none()
    {
        TestLoft loft = await Open();
        Assert.Single((await Export(loft)).TrimEnd().Split("\r\n"));
        (await loft.Caller.Get("/v1/sites/nowhere/outcomes/export?format=csv")).ExpectProblem(404, "urn:witheradvisor:problem:unknown-site");
        (await loft.Caller.Get(loft.Path + "/outcomes/export?format=xlsx")).ExpectInvalid("format");
        (await loft.Caller.Get(loft.Path + "/outcomes/export?format=csv&from=2026-01-02T00:00:00Z&to=2026-01-01T00:00:00Z")).ExpectInvalid("to");
    }

    private async Task<TestLoft> Open()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.NameScales();
        return loft;
    }

    /// <summary>A log with everything in it that might be lost on the way: three advised batches and one off paper.</summary>
    private async Task<TestLoft> Nasty()
    {
        TestLoft loft = await Open();
        foreach (string text in new[] { "=HYPERLINK(1)", "'quoted", "plain, with \"quotes\" and 茶" })
        {
            JsonObject batch = Bodies.BatchOn("trough-1");
            batch["label"]!["cultivar"] = text;
            batch["surface_water"] = new JsonObject { ["measured_kg_per_kg"] = 0.07, ["feel"] = "damp" };
            batch["measured_moisture_wet_basis_percent"] = 77.3;
            batch["ready_by"] = "2026-03-02T01:00:00.123+05:30";
            batch["label"]!["field"] = text;
            JsonObject outcome = Bodies.Outcome();
            outcome["note"] = text;
            outcome["weather"] = "@sum";
            (await loft.Caller.Put($"/v1/batches/{await loft.Unloaded(10.0 + 1.0 / 3, batch)}/outcome", outcome)).Expect(201);
        }

        (await Import(loft, PaperPairs, "take")).Expect(200);
        return loft;
    }

    private static Task<Reply> Import(TestLoft loft, string csv, string mode) =>
        loft.Caller.PostText($"{loft.Path}/outcomes/import?mode={mode}", csv, "text/csv");

    private static async Task<string> Export(TestLoft loft) =>
        (await loft.Caller.Get(loft.Path + "/outcomes/export?format=csv")).Expect(200).Text;

    private static List<Dictionary<string, string>> Rows(string csv)
    {
        using CsvHelper.CsvReader reader = new(new StringReader(csv), System.Globalization.CultureInfo.InvariantCulture);
        return [.. reader.GetRecords<dynamic>().Select(row => ((IDictionary<string, object>)row).ToDictionary(cell => cell.Key, cell => (string)cell.Value))];
    }
}

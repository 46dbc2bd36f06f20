using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Batches;

public sealed class LotKeepingTests(RunningService service)
{
    [Fact]
    public async Task A_batch_on_an_empty_trough_has_no_warnings() => Assert.Empty(await Warnings(first: null, _ => { }));

    [Fact]
    public async Task Of_equal_batches_that_come_at_once_each_is_warned_of_all_before_it()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonObject batch = Bodies.BatchOn("trough-1");
        batch["green_weight_kg"] = 800;

        JsonNode[] taken = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => loft.Take((JsonObject)batch.DeepClone())));

        // Alone 800 kg fit; any two of them do not, so that all but the first are warned, and of each batch before it.
        string[][] codes = [.. taken.Select(one => one["warnings"]!.AsArray().Select(warning => (string)warning!["code"]!).ToArray())];
        Assert.Single(codes, one => one.Length == 0);
        Assert.Equal(7, codes.Count(one => one is ["holds_another_batch", .., "load_over_most"]));
        Assert.Equal(8, taken.Select(one => (string)one["batch"]!["id"]!).Distinct().Count());
    }

    [Fact]
    public async Task Two_batches_at_one_time_are_warned_of_whatever_their_labels() =>
        Assert.Equal(["holds_another_batch"], await Warnings(_ => { }, _ => { }));

    [Fact]
    public async Task Another_field_on_the_same_trough_is_warned_of_and_not_forbidden() =>
        Assert.Equal(["holds_another_label"], await Warnings(_ => { }, label => label["field"] = "Field 8"));

    [Fact]
    public async Task Young_and_mature_bushes_are_warned_of() =>
        Assert.Equal(["holds_another_label", "mixes_bush_ages"], await Warnings(_ => { }, label => label["bush_age"] = "young"));

    [Fact]
    public async Task Two_cultivars_are_warned_of() =>
        Assert.Equal(["holds_another_label", "mixes_cultivars"], await Warnings(_ => { }, label => label["cultivar"] = "Clone B"));

    [Fact]
    public async Task Two_standards_are_warned_of() =>
        Assert.Equal(["holds_another_label", "mixes_leaf_standards"], await Warnings(_ => { }, label => label["leaf_standard"] = "coarse"));

    [Fact]
    public async Task What_nobody_said_is_not_known_to_differ() =>
        Assert.Equal(["holds_another_label"], await Warnings(label => label["cultivar"] = null, _ => { }));

    [Fact]
    public async Task Together_more_than_the_trough_takes_is_warned_of() =>
        Assert.Equal(["holds_another_batch", "load_over_most"], await Warnings(_ => { }, _ => { }, eachKg: 800));

    [Fact]
    public async Task Leaf_that_has_left_is_not_warned_of() =>
        Assert.Empty(await Warnings(_ => { }, label => label["field"] = "Field 8", unloadFirst: true));

    [Fact]
    public async Task A_warning_names_the_lot_in_a_sentence()
    {
        TestLoft loft = await TestLoft.Open(service);
        JsonNode first = await loft.Take();
        JsonObject second = Bodies.BatchOn("trough-1");
        second["label"]!["field"] = "Field 8";
        JsonNode warning = (await loft.Take(second))["warnings"]![0]!;
        Assert.Equal((string?)first["batch"]!["id"], (string?)warning["other_batch"]);
        Assert.Contains("Field 7", (string)warning["text"]!);
    }

    [Fact]
    public async Task Another_trough_is_another_matter()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.AddTrough("trough-2");
        await loft.Take();
        JsonObject second = Bodies.BatchOn("trough-2");
        second["label"]!["field"] = "Field 8";
        Assert.Empty((await loft.Take(second))["warnings"]!.AsArray());
    }

    private async Task<IEnumerable<string>> Warnings(
        Action<JsonNode>? first, Action<JsonNode> second, double eachKg = 500, bool unloadFirst = false)
    {
        TestLoft loft = await TestLoft.Open(service);
        if (first is not null)
        {
            JsonNode taken = await loft.Take(Batch(first, eachKg, "2026-03-01T13:00:00+05:30"));
            if (unloadFirst)
            {
                JsonObject left = new() { ["unloaded_at"] = "2026-03-01T13:30:00+05:30" };
                (await loft.Caller.Post($"/v1/batches/{taken["batch"]!["id"]}/unloaded", left)).Expect(200);
            }
        }

        JsonNode answer = await loft.Take(Batch(second, eachKg, "2026-03-01T14:00:00+05:30"));
        return answer["warnings"]!.AsArray().Select(warning => (string)warning!["code"]!);
    }

    private static JsonObject Batch(Action<JsonNode> label, double kg, string loadedAt)
    {
        JsonObject batch = Bodies.BatchOn("trough-1");
        batch["green_weight_kg"] = kg;
        batch["loaded_at"] = loadedAt;
        label(batch["label"]!);
        return batch;
    }
}

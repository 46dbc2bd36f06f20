using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.KeptBefore;

/// <summary>What a released version learned from its log, and that today's reads the same out of it, the air it advised among it.</summary>
public sealed class KeptRecalibrationTests(KeptLofts lofts)
{
    /// <summary>Sums of a fit are added in an order that may change.</summary>

    private static readonly TimeSpan LongestRun = TimeSpan.FromMinutes(5);

    public static TheoryData<string, string, string> Reports =>
    [
        .. from version in KeptFile.Versions
           from site in KeptFile.In(version, "expected/sites")
           where KeptFile.In(version, $"expected/sites/{site}").Contains("recalibrations")
           from file in KeptFile.In(version, $"expected/sites/{site}/recalibrations")
           select (version, site, file),
    ];

    [Theory]
    [MemberData(nameof(Reports))]
    public async Task A_kept_report_is_told_as_it_was(string version, string site, string file)
    {
        string id = Path.GetFileNameWithoutExtension(file);

        Assert.Equal(Then(version, site, file).ToJsonString(), JsonNode.Parse(await lofts.Of(version).Text($"/v1/sites/{site}/recalibrations/{id}"))!.ToJsonString());
    }

    [Fact]
    public async Task A_log_without_air_is_still_learned_from_by_the_air_that_was_advised()
    {
        const string version = "0.1.0";
        const string site = "old-valley";
        JsonNode then = Then(version, site, Assert.Single(KeptFile.In(version, $"expected/sites/{site}/recalibrations")));
        await using KeptLoft own = new(version);
        Caller caller = new(own.CreateClient());
        string path = (await caller.Post($"/v1/sites/{site}/recalibrations")).Expect(202).Headers.Location!.OriginalString;

        JsonNode now = await Ended(caller, path);

        Assert.Equal("done", (string?)now["status"]);
        Assert.Equal((int)then["report"]!["used"]!, (int)now["report"]!["used"]!);
        AssertAlike(then["report"]!["residuals"]!, now["report"]!["residuals"]!);
        AssertAlike(then["report"]!["coefficients"]!, now["report"]!["coefficients"]!);
    }

    private static JsonNode Then(string version, string site, string file) =>
        JsonNode.Parse(Renamed.By(Renamed.Codes, KeptFile.Text(version, $"expected/sites/{site}/recalibrations/{file}")))!;

    private static async Task<JsonNode> Ended(Caller caller, string path)
    {
        using CancellationTokenSource tooLong = new(LongestRun);
        while (true)
        {
            JsonNode job = (await caller.Get(path)).Expect(200).Json;
            if ((string)job["status"]! is not ("queued" or "running"))
            {
                return job;
            }

            await Task.Delay(20, tooLong.Token);
        }
    }

    /// <summary>Numbers in the same places; which they are is up to the model of today, which judges the leaf anew from its weather.</summary>
    private static void AssertAlike(JsonNode then, JsonNode now)
    {
        (string Path, double Value)[] before = [.. Numbers(then)];
        (string Path, double Value)[] after = [.. Numbers(now)];
        Assert.NotEmpty(before);
        Assert.Equal(before.Select(one => one.Path), after.Select(one => one.Path));
    }

    private static IEnumerable<(string Path, double Value)> Numbers(JsonNode? node) => node switch
    {
        JsonObject members => members.SelectMany(member => Numbers(member.Value)),
        JsonArray items => items.SelectMany(Numbers),
        JsonValue value when value.GetValueKind() == System.Text.Json.JsonValueKind.Number => [(value.GetPath(), (double)value)],
        _ => [],
    };
}

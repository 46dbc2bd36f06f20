using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.WeatherFeeds.Testing;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>A site with a gauge that is read once a day and a feed: the gauge says how much rain fell, the feed says when.</summary>
public sealed class GaugeAndFeedTests
{
    /// <summary>The feed's hour that ends as the gauge is emptied, a day before it is read.</summary>
    private static readonly int Emptied = LongAnswer.Now - 26;

    [Fact]
    public async Task Rain_that_the_feed_has_in_the_evening_has_dried_off_and_rain_of_the_morning_has_not()
    {
        JsonNode evening = await Advice(rainyFrom: 1, gaugeMm: 18);
        JsonNode morning = await Advice(rainyFrom: 19, gaugeMm: 18);

        Assert.Equal("[6,0,0,0]", evening["input"]!["rain_totals"]![0]!["pattern_mm"]!.ToJsonString());
        Assert.Equal("[0,0,0,6]", morning["input"]!["rain_totals"]![0]!["pattern_mm"]!.ToJsonString());
        Assert.True(WaterOnLeaf(evening) < WaterOnLeaf(morning) / 2, $"{WaterOnLeaf(evening)} {WaterOnLeaf(morning)}");
        Assert.Contains("They were spread over parts of the day as a feed has its rain", evening.ToJsonString(), StringComparison.Ordinal);
        Assert.All([evening, morning], advice => Assert.Equal("true", (string?)advice["replayed"]));
    }

    [Fact]
    public async Task A_gauge_that_stayed_dry_is_believed_against_the_feed()
    {
        JsonNode dry = await Advice(rainyFrom: 19, gaugeMm: 0);

        Assert.True(WaterOnLeaf(dry) < 0.05, $"{WaterOnLeaf(dry)}");
    }

    [Fact]
    public async Task A_kept_total_cannot_bring_a_pattern_of_its_own()
    {
        using FakeFeed feed = FakeFeed.Json(LongAnswer.Text());
        await using FedService service = new(feed.Url);
        TestLoft loft = await service.Open();
        JsonArray totals = [new JsonObject { ["from"] = Time(0), ["to"] = Time(24), ["rain_mm"] = 3, ["pattern_mm"] = new JsonArray(1, 2) }];

        (await loft.Caller.Post(loft.Path + "/rain-totals", totals)).ExpectInvalid("[0].pattern_mm");
    }

    /// <summary>Advice for leaf loaded two hours after the gauge was read, with six hours of rain told by the feed.</summary>
    private static async Task<JsonNode> Advice(int rainyFrom, double gaugeMm)
    {
        using FakeFeed feed = FakeFeed.Json(LongAnswer.Text(body =>
        {
            body.Fill("precipitation", () => 0, Enumerable.Range(Emptied - 48, 75));
            body.Fill("precipitation", () => 1, Enumerable.Range(Emptied + rainyFrom, 6));
        }));
        await using FedService service = new(feed.Url);
        TestLoft loft = await service.Open();
        (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);
        JsonArray totals = [new JsonObject { ["from"] = Time(0), ["to"] = Time(24), ["rain_mm"] = gaugeMm }];
        (await loft.Caller.Post(loft.Path + "/rain-totals", totals)).Expect(200);
        JsonNode kept = (await loft.Take(service.Batch()))["kept"]!;
        string path = $"/v1/advice/{kept["id"]}";
        return new JsonObject
        {
            ["advice"] = kept["advice"]!.DeepClone(),
            ["input"] = (await loft.Caller.Get(path + "/request")).Expect(200).Json.DeepClone(),
            ["replayed"] = (await loft.Caller.Post(path + "/replay")).Expect(200).Headers.GetValues("Replay-Identical").Single(),
        };
    }

    private static double WaterOnLeaf(JsonNode advice) => (double)advice["advice"]!["leaf"]!["surface_water"]!["value_kg_per_kg"]!;

    private static string Time(int hoursAfterEmptied) => FedService.Text(LongAnswer.First.AddHours(Emptied + hoursAfterEmptied));
}

using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>
/// Every way for a feed to be ill, through the service: a site names it, its weather is fetched, leaf is brought in. Each
/// ends in advice that says what was missing, none in a failure of the service, none past the feed's time limit.
/// </summary>
public sealed class FeedFaultTests
{
    public static TheoryData<string> Faults => [.. FeedFault.All.Select(fault => fault.Name)];

    [Theory]
    [MemberData(nameof(Faults))]
    public async Task An_ill_feed_ends_in_advice_with_a_stated_reason(string name)
    {
        FeedFault fault = FeedFault.All.Single(fault => fault.Name == name);
        using FakeFeed feed = fault.Serve();
        await using FedService service = new(feed.Url);
        TestLoft loft = await service.Open();
        DateTimeOffset asked = service.Clock.GetUtcNow();

        JsonNode refresh = await Refresh(service, loft, feed);
        Assert.InRange(service.Clock.GetUtcNow() - asked, TimeSpan.Zero, FedService.TotalLimit);
        JsonNode taken = await loft.Take(service.Batch());

        JsonNode advice = taken["kept"]!["advice"]!;
        TestContext.Current.TestOutputHelper!.WriteLine($"| {name} | {Said(refresh)} | {Said(advice, taken["feed"]!)} |");
        Assert.Equal(fault.Status, (string?)refresh["status"]);
        if (fault.Status == "taken")
        {
            AssertTaken(fault, refresh["taken"]!, taken);
        }
        else
        {
            AssertRefused(fault, refresh["refusal"]!, taken);
            await AssertThatOneReadingHelps(loft, service, taken);
        }
    }

    [Fact]
    public async Task A_feed_that_is_well_leaves_nothing_to_assume_of_the_weather()
    {
        using FakeFeed feed = FakeFeed.Json(LongAnswer.Text());
        await using FedService service = new(feed.Url);
        TestLoft loft = await service.Open();

        JsonNode refresh = await Refresh(service, loft, feed);
        JsonNode taken = await loft.Take(service.Batch());

        Assert.Empty(refresh["taken"]!["notes"]!.AsArray());
        Assert.Equal(LongAnswer.Now + 1, (int)refresh["taken"]!["analysed_hours"]!);
        Assert.Equal(LongAnswer.Days * 24, (int)refresh["taken"]!["analysed_hours"]! + (int)refresh["taken"]!["forecast_hours"]!);
        Assert.Equal(LongAnswer.First, (DateTimeOffset)refresh["taken"]!["from"]!);
        Assert.Empty(Assumed(taken["kept"]!["advice"]!));
    }

    private static void AssertTaken(FeedFault fault, JsonNode weather, JsonNode taken)
    {
        JsonNode advice = taken["kept"]!["advice"]!;
        Assert.Equal("advised", (string?)advice["status"]);
        Assert.True(fault.Says is null == (weather["notes"]!.AsArray().Count == 0), weather.ToJsonString());
        Assert.True(fault.Says is null || Codes(weather["notes"]!).Contains(fault.Says), weather.ToJsonString());
        Assert.True(fault.Assumes is null || Assumed(advice).Contains(fault.Assumes), string.Join(", ", Assumed(advice)));
        Assert.Equal(
            weather["notes"]!.AsArray().Select(note => (string)note!["text"]!),
            taken["feed"]!["notes"]!.AsArray().Select(note => (string)note!));
        Assert.Null(taken["feed"]!["refusal"]);
    }

    private static void AssertRefused(FeedFault fault, JsonNode refusal, JsonNode taken)
    {
        JsonNode advice = taken["kept"]!["advice"]!;
        Assert.Equal("cannot_advise", (string?)advice["status"]);
        Assert.Equal("ambient_air", (string?)advice["refusal"]!["binding"]![0]!["limit"]);
        Assert.Equal("read_ambient_air", (string?)advice["refusal"]!["reliefs"]![0]!["relief"]);
        Assert.Contains(fault.Assumes, Assumed(advice));
        Assert.Equal(fault.Says, (string?)refusal["reason"]);
        Assert.Equal((string?)refusal["text"], (string?)taken["feed"]!["refusal"]);
        Assert.Contains("gave no weather on Fri 5 Jun 2026, 15:50", (string)taken["feed"]!["text"]!, StringComparison.Ordinal);
    }

    private static async Task AssertThatOneReadingHelps(TestLoft loft, FedService service, JsonNode taken)
    {
        await loft.Observe([new JsonObject
        {
            ["time"] = FedService.Text(service.Clock.GetUtcNow()), ["dry_bulb_c"] = 19.5, ["wet_bulb_c"] = 17.5,
        }]);
        Reply again = (await loft.Caller.Post($"/v1/batches/{taken["batch"]!["id"]}/advice")).Expect(201);
        Assert.Equal("advised", (string?)again.Json["advice"]!["status"]);
        Assert.Equal(taken["feed"]!.ToJsonString(), again.Json["feed"]!.ToJsonString());
    }

    /// <summary>Where the feed makes us wait, the clock goes on by the limit of a try for each question that comes.</summary>
    private static async Task<JsonNode> Refresh(FedService service, TestLoft loft, FakeFeed feed)
    {
        Task<Reply> refresh = loft.Caller.Post(loft.Path + "/weather/refresh");
        while (feed.Arrival is not null && await Task.WhenAny(refresh, feed.Arrival()) != refresh)
        {
            service.Clock.Advance(FedService.TryLimit);
        }

        return (await refresh).Expect(200).Json;
    }

    private static IReadOnlyList<string> Assumed(JsonNode advice) =>
        [.. Codes(advice["assumptions"]!).Concat(Codes(advice["leaf"]!["missing"]!)).Distinct()];

    private static IEnumerable<string> Codes(JsonNode notes) => notes.AsArray().Select(note => (string)note!["code"]!);

    private static string Said(JsonNode refresh) => (string?)refresh["status"] == "refused"
        ? $"refused, {refresh["refusal"]!["reason"]}: {refresh["refusal"]!["text"]}"
        : string.Join(' ', refresh["taken"]!["notes"]!.AsArray().Select(note => (string)note!["text"]!).Prepend("taken."));

    private static string Said(JsonNode advice, JsonNode feed) =>
        $"{advice["status"]}, assumed {string.Join(", ", Assumed(advice).DefaultIfEmpty("nothing"))}; beside it: {feed["text"]}";
}

using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.WeatherFeeds.Tests;

namespace WitherAdvisor.Api.Tests.Feeds;

/// <summary>The same weather by a feed, as CSV, as JSON and inline: advice is made of weather, not of the way it came in.</summary>
public sealed class WaysInTests
{
    private static readonly (string Column, string Field)[] Fields =
    [
        ("temperature_2m", "dry_bulb_c"),
        ("dew_point_2m", "dew_point_c"),
        ("precipitation", "rain_mm"),
        ("wind_speed_10m", "wind_m_per_s"),
        ("surface_pressure", "station_pressure_hpa"),
        ("shortwave_radiation", "shortwave_w_per_m2"),
    ];

    private static readonly JsonObject Answer = LongAnswer.Body();

    private static readonly IReadOnlyList<int> Read = [.. Enumerable.Range(0, LongAnswer.Now + 1)];

    private static readonly IReadOnlyList<int> Forecast = [.. Enumerable.Range(LongAnswer.Now + 1, LongAnswer.Days * 24 - LongAnswer.Now - 1)];

    [Fact]
    public async Task The_same_weather_by_feed_by_csv_by_json_and_inline_gives_byte_identical_advice()
    {
        using FakeFeed feed = FakeFeed.Json(Answer.ToJsonString());
        await using FedService service = new(feed.Url);

        string fed = await Advice(service, async loft =>
            (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200));
        string csv = await Advice(service, async loft =>
        {
            (await loft.Caller.PostText(loft.Path + "/weather?kind=observed", Csv(Read), "text/csv")).Expect(200);
            (await loft.Caller.PostText(loft.Path + "/weather?kind=forecast", Csv(Forecast), "text/csv")).Expect(200);
        });
        string json = await Advice(service, async loft =>
        {
            (await loft.Caller.Post(loft.Path + "/weather?kind=observed", Json(Read))).Expect(200);
            (await loft.Caller.Post(loft.Path + "/weather?kind=forecast", Json(Forecast))).Expect(200);
        });
        string inline = (await service.Caller.Post("/v1/advice", Inline(service))).Expect(200).Text;

        Assert.Contains("\"advised\"", fed, StringComparison.Ordinal);
        Assert.Contains("\"spell\":{\"kind\"", fed, StringComparison.Ordinal);
        Assert.Equal(fed, csv);
        Assert.Equal(fed, json);
        Assert.Equal(fed, inline);
    }

    [Fact]
    public async Task What_an_advice_was_made_of_names_no_feed_and_makes_the_same_advice_again()
    {
        using FakeFeed feed = FakeFeed.Json(Answer.ToJsonString());
        await using FedService service = new(feed.Url);
        TestLoft loft = await service.Open();
        (await loft.Caller.Post(loft.Path + "/weather/refresh")).Expect(200);
        string id = (string)(await loft.Take(service.Batch()))["kept"]!["id"]!;

        string input = (await loft.Caller.Get($"/v1/advice/{id}/request")).Expect(200).Text;
        string given = (await loft.Caller.Get($"/v1/advice/{id}")).Expect(200).Text;

        Assert.DoesNotContain(FedService.Feed, input, StringComparison.Ordinal);
        Assert.Equal(given, (await loft.Caller.SendJson(HttpMethod.Post, "/v1/advice", input)).Expect(200).Text);
        Assert.Equal(["true"], (await loft.Caller.Post($"/v1/advice/{id}/replay")).Expect(200).Headers.GetValues("Replay-Identical"));
    }

    private static async Task<string> Advice(FedService service, Func<TestLoft, Task> bringWeather)
    {
        TestLoft loft = await service.Open();
        await bringWeather(loft);
        string id = (string)(await loft.Take(service.Batch()))["kept"]!["id"]!;
        return (await loft.Caller.Get($"/v1/advice/{id}")).Expect(200).Text;
    }

    private static JsonObject Inline(FedService service)
    {
        JsonObject batch = service.Batch();
        batch.Remove("trough");
        return new JsonObject
        {
            ["site"] = Bodies.Site(),
            ["trough"] = Bodies.Trough(),
            ["batch"] = batch,
            ["weather"] = Json(Read),
            ["forecast"] = Json(Forecast),
        };
    }

    private static JsonArray Json(IReadOnlyList<int> places) =>
    [
        .. places.Select(place => new JsonObject(
        [
            KeyValuePair.Create("time", (JsonNode?)Time(place)),
            .. Fields.Select(field => KeyValuePair.Create(field.Field, (JsonNode?)Answer.Value(field.Column, place))),
        ])),
    ];

    private static string Csv(IReadOnlyList<int> places) =>
        $"time,{string.Join(',', Fields.Select(field => field.Field))}\n"
        + string.Concat(places.Select(place =>
            $"{Time(place)},{string.Join(',', Fields.Select(field => Answer.Column(field.Column)[place]!.ToJsonString()))}\n"));

    private static string Time(int place) => FedService.Text(LongAnswer.First.AddHours(place));
}

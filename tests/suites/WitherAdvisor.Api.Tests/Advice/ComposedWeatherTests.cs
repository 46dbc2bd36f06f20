using System.Text.Json.Nodes;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.Loft.Kept.Weather;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Api.Tests.Advice;

/// <summary>Advice from kept weather, whichever way that came in.</summary>
public sealed class ComposedWeatherTests(RunningService service)
{
    private static readonly DateTimeOffset LoadedAt = DateTimeOffset.Parse("2026-03-01T13:00:00+05:30");
    private static readonly DateTimeOffset FetchedAt = LoadedAt.AddHours(-9);

    [Fact]
    public async Task The_same_weather_gives_byte_identical_advice_by_feed_by_upload_and_inline()
    {
        JsonArray read = Bodies.Readings(FetchedAt, 24 * 8);
        JsonArray forecast = Bodies.Readings(FetchedAt.AddHours(33), 33);
        JsonObject inline = Bodies.Advice();
        (inline["weather"], inline["forecast"]) = (read.DeepClone(), forecast.DeepClone());
        string stated = (await service.Caller.Post("/v1/advice", inline)).Expect(200).Json.ToJsonString();

        TestLoft uploaded = await TestLoft.Open(service);
        await uploaded.Observe(read);
        (await service.Caller.Post(uploaded.Path + "/weather?kind=forecast", forecast)).Expect(200);
        TestLoft fed = await TestLoft.Open(service);
        await Feed(fed, read, forecast);

        Assert.Contains("the forecast was used for 9 of those hours", stated, StringComparison.Ordinal);
        Assert.Equal(stated, await Advice(uploaded));
        Assert.Equal(stated, await Advice(fed));
    }

    [Fact]
    public async Task A_feed_that_has_long_been_silent_still_gives_advice_marked_stale()
    {
        TestLoft loft = await TestLoft.Open(service);
        await Feed(loft, Bodies.Readings(LoadedAt.AddHours(-100), 24 * 8), Bodies.Readings(LoadedAt.AddHours(-50), 50));

        string advice = await Advice(loft);

        Assert.Contains("weather_stale", advice, StringComparison.Ordinal);
        Assert.Contains("There is no reading from the 100 h before loading: the forecast was used for 50 of those hours.", advice, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_person_read_wins_over_a_later_feed()
    {
        TestLoft read = await TestLoft.Open(service);
        await read.Observe(Bodies.Readings(LoadedAt, 24 * 8));
        TestLoft both = await TestLoft.Open(service);
        await both.Observe(Bodies.Readings(LoadedAt, 24 * 8));
        JsonArray wet = Bodies.Readings(LoadedAt, 24 * 8);
        foreach (JsonNode? reading in wet)
        {
            reading!["rain_mm"] = 5;
        }

        await Feed(both, wet, []);

        Assert.Equal(await Advice(read), await Advice(both));
    }

    private static async Task<string> Advice(TestLoft loft) => (await loft.Take())["kept"]!["advice"]!.ToJsonString();

    private Task Feed(TestLoft loft, JsonArray analysed, JsonArray forecast) =>
        service.Services.GetRequiredService<IWeatherStore>().SaveFromFeed(
            loft.Site, "valley-feed", Readings(analysed), Readings(forecast), FetchedAt, TestContext.Current.CancellationToken);

    private static IReadOnlyList<WeatherReading> Readings(JsonArray readings) =>
    [
        .. JsonNode.Parse(readings.ToJsonString())!.AsArray().Select(reading => new WeatherReading(
            DateTimeOffset.Parse((string)reading!["time"]!),
            (double)reading["dry_bulb_c"]!,
            RelativeHumidity: (double)reading["relative_humidity_percent"]! / 100,
            RainMm: (double)reading["rain_mm"]!,
            WindMPerS: (double)reading["wind_m_per_s"]!)),
    ];
}

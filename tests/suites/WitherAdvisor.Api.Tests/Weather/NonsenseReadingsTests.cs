using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Weather;

/// <summary>What a reading says of its rain and its time, held to what can be.</summary>
public sealed class NonsenseReadingsTests(RunningService service)
{
    private const string Day = "from=2026-03-01T00:00:00Z&to=2026-03-02T00:00:00Z";

    [Theory]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "rain_mm": 2, "rain_minutes": 0}""", "[0].rain_minutes")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "rain_mm": 2, "rain_minutes": 1441}""", "[0].rain_minutes")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "rain_mm": 2, "rain_minutes": "15"}""", "[0].rain_minutes")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": 19, "rain_minutes": 15}""", "[0].rain_minutes")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "rain_mm": 2, "rain_minutes_from": "told"}""", "[0].rain_minutes_from")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "rain_mm": 2, "rain_minutes": 15, "rain_minutes_from": "hearsay"}""", "[0].rain_minutes_from")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "weather_code": 100}""", "[0].weather_code")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "visibility_m": -1}""", "[0].visibility_m")]
    [InlineData("""{"time": "2099-03-01T07:00:00Z", "dry_bulb_c": 19}""", "[0].time")]
    public async Task Is_refused_by_field(string reading, string field)
    {
        TestLoft loft = await TestLoft.Open(service);
        (await loft.Caller.Post(loft.Path + "/weather?kind=observed", new JsonArray(JsonNode.Parse(reading)))).ExpectInvalid(field);
    }

    [Fact]
    public async Task What_a_reading_says_of_its_rain_and_sky_comes_back()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.Observe(JsonNode.Parse("""
            [{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": 15, "rain_mm": 2, "rain_minutes": 15, "weather_code": 45, "visibility_m": 400}]
            """)!.AsArray());

        JsonNode read = (await loft.Caller.Get($"{loft.Path}/weather?kind=observed&{Day}")).Expect(200).Json["readings"]![0]!;

        Assert.Equal((15.0, 45, 400.0), ((double)read["rain_minutes"]!, (int)read["weather_code"]!, (double)read["visibility_m"]!));
        Assert.Null(read["rain_minutes_from"]);
    }

    [Fact]
    public async Task A_clock_that_goes_a_quarter_of_an_hour_fast_is_granted_and_a_forecast_may_lie_ahead()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.Observe(JsonNode.Parse("""[{"time": "2026-03-01T08:14:00Z", "dry_bulb_c": 19}]""")!.AsArray());
        (await loft.Caller.Post(loft.Path + "/weather?kind=forecast", JsonNode.Parse("""[{"time": "2026-03-02T08:00:00Z", "dry_bulb_c": 19}]""")!)).Expect(200);
    }

    [Fact]
    public async Task A_gauge_that_was_read_in_the_future_is_refused()
    {
        TestLoft loft = await TestLoft.Open(service);
        (await loft.Caller.Post(loft.Path + "/rain-totals", JsonNode.Parse("""[{"from": "2099-03-01T07:00:00Z", "to": "2099-03-01T09:00:00Z", "rain_mm": 2}]""")!)).ExpectInvalid("[0].to");
    }
}

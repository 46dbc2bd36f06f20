using System.Text.Json.Nodes;
using WitherAdvisor.Air;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Weather;

/// <summary>
/// Coefficients of FAO-56 (Allen et al. 1998), eq. 15 and 16: 0.000662 aspirated, 0.000800 in a light draught, 0.001200
/// unventilated, 1/K.
/// </summary>
public sealed class InstrumentTests(RunningService service)
{
    private const double PressureHpa = 845;
    private const string At = "2026-03-01T13:00:00%2B05:30";

    [Theory]
    [InlineData("aspirated", 0.000662)]
    [InlineData("sling", 0.000662)]
    [InlineData("screen", 0.000800)]
    [InlineData("unventilated", 0.001200)]
    public async Task A_wet_bulb_counts_as_its_instrument_reads_at_station_pressure(string instrument, double coefficientPerK)
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.Observe([Bulbs(instrument)]);

        double dewPointC = (double)(await Hour(loft))["dew_point_c"]!;

        double vapourPa = Saturation.VapourPressurePa(19.5, PressureHpa * 100, MoistAirFormulation.RealGas) - coefficientPerK * PressureHpa * 100 * 6.1;
        Assert.Equal(vapourPa, Saturation.VapourPressurePa(dewPointC, PressureHpa * 100, MoistAirFormulation.RealGas), 5.0);
    }

    [Fact]
    public async Task A_bulb_on_a_wall_reads_higher_so_that_the_same_figures_mean_drier_air_and_none_means_the_thermodynamic_one()
    {
        TestLoft aspirated = await TestLoft.Open(service);
        TestLoft unsaid = await TestLoft.Open(service);
        TestLoft still = await TestLoft.Open(service);
        await aspirated.Observe([Bulbs("aspirated")]);
        await unsaid.Observe([Bulbs(null)]);
        await still.Observe([Bulbs("unventilated")]);

        JsonNode thermodynamic = await Hour(unsaid);

        Assert.Equal(19.5, (double)thermodynamic["wet_bulb_c"]!, 0.02);
        Assert.InRange((double)(await Hour(aspirated))["wet_bulb_c"]!, 19.4, 19.6);
        Assert.True((double)(await Hour(still))["hygrometric_difference_k"]! > 6.1 * 1.1);
    }

    [Fact]
    public async Task What_the_reading_said_is_kept_as_it_was_said_by_JSON_and_by_CSV()
    {
        TestLoft json = await TestLoft.Open(service);
        TestLoft csv = await TestLoft.Open(service);
        await json.Observe([Bulbs("screen")]);
        (await csv.Caller.PostText(csv.Path + "/weather?kind=observed", "time,dry_bulb_c,wet_bulb_c,instrument,station_pressure_hpa\n2026-03-01T07:00:00Z,25.6,19.5,screen,845", "text/csv")).Expect(200);

        foreach (TestLoft loft in new[] { json, csv })
        {
            JsonNode kept = (await loft.Caller.Get($"{loft.Path}/weather?kind=observed&from=2026-03-01T00:00:00Z&to=2026-03-02T00:00:00Z")).Expect(200).Json;
            Assert.Equal("screen", (string)kept["readings"]![0]!["instrument"]!);
            Assert.Equal(19.5, (double)kept["readings"]![0]!["wet_bulb_c"]!);
        }

        Assert.Equal((await Hour(json)).ToJsonString(), (await Hour(csv)).ToJsonString());
    }

    [Fact]
    public async Task A_newer_humidity_brings_its_own_instrument_or_none()
    {
        TestLoft loft = await TestLoft.Open(service);
        await loft.Observe([Bulbs("unventilated")]);
        await loft.Observe([new JsonObject { ["time"] = "2026-03-01T07:00:00Z", ["wet_bulb_c"] = 18 }]);

        Assert.Equal(18, (double)(await Hour(loft))["wet_bulb_c"]!, 0.02);
    }

    [Theory]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": 20, "instrument": "sling"}""", "[0].instrument")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": 20, "wet_bulb_c": 19, "instrument": "Sling"}""", "[0].instrument")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": 4, "wet_bulb_c": -1, "instrument": "sling"}""", "[0].wet_bulb_c")]
    [InlineData("""{"time": "2026-03-01T07:00:00Z", "dry_bulb_c": 45, "wet_bulb_c": 10, "instrument": "unventilated"}""", "[0].wet_bulb_c")]
    public async Task An_instrument_that_does_not_fit_its_bulbs_is_refused(string reading, string field)
    {
        TestLoft loft = await TestLoft.Open(service);
        (await loft.Caller.PostText(loft.Path + "/weather?kind=observed", $"[{reading}]")).ExpectInvalid(field);
    }

    private static JsonObject Bulbs(string? instrument)
    {
        JsonObject reading = new()
        {
            ["time"] = "2026-03-01T07:00:00Z",
            ["dry_bulb_c"] = 25.6,
            ["wet_bulb_c"] = 19.5,
            ["station_pressure_hpa"] = PressureHpa,
        };
        if (instrument is not null)
        {
            reading["instrument"] = instrument;
        }

        return reading;
    }

    private static async Task<JsonNode> Hour(TestLoft loft) => Assert.Single(
        (await loft.Caller.Get($"{loft.Path}/weather/review?at={At}")).Expect(200).Json["hours"]!.AsArray(),
        hour => (string)hour!["time"]! == "2026-03-01T12:30:00+05:30")!;
}

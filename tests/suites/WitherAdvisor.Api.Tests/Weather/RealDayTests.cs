using System.Globalization;
using System.Text.Json.Nodes;
using WitherAdvisor.Api.Tests.Testing;

namespace WitherAdvisor.Api.Tests.Weather;

/// <summary>
/// A real day of airways reports (fixtures/airways/README.md) sent as a user would: the reports up to loading as
/// readings in CSV, those after it as the forecast that came true, the rain of the last days by hand, for the reports
/// hold none.
/// </summary>
public sealed class RealDayTests(RunningService service)
{
    /// <summary>Zones of the stations, and rain stated by hand for each day before the batch.</summary>
    public static TheoryData<string, string, double, string> Stations => new()
    {
        // A humid windward coast after rain, a humid island after light showers at hours nobody noted, a high dry plateau after a month without rain.
        { "ITO", "Pacific/Honolulu", 25, "wet" },
        { "PGUM", "Pacific/Guam", 1, "wet|ordinary" },
        { "MMMX", "America/Mexico_City", 0, "dry_windy|ordinary" },
    };

    [Theory]
    [MemberData(nameof(Stations))]
    public async Task A_real_day_of_reports_gives_advice_that_can_be_followed(
        string station, string zone, double rainMmADay, string spells)
    {
        IReadOnlyList<string[]> reports = Reports(station);
        DateTimeOffset loadedAt = At(reports[6]);
        Caller caller = service.Caller;
        string site = $"/v1/sites/{station.ToLowerInvariant()}-{Guid.NewGuid().ToString("N")[..8]}";
        (await caller.Put(site, Site(reports[0], zone))).Expect(201);
        (await caller.Put(site + "/troughs/trough-1", Bodies.Trough())).Expect(201);
        (await caller.PostText(site + "/weather?kind=observed", Csv(reports.Take(7)), "text/csv")).Expect(200);
        (await caller.PostText(site + "/weather?kind=forecast", Csv(reports.Skip(7)), "text/csv")).Expect(200);
        (await caller.Post(site + "/rain-totals", RainOfThirtyDays(loadedAt, rainMmADay))).Expect(200);

        JsonNode taken = (await caller.Post(site + "/batches", Batch(loadedAt))).Expect(201).Json;

        JsonNode advice = taken["kept"]!["advice"]!;
        Assert.Equal("advised", (string?)advice["status"]);
        Assert.Contains((string)advice["spell"]!["kind"]!, spells.Split('|'));
        JsonNode plan = advice["plan"]!;
        double plenumC = (double)plan["set_now"]!["plenum_dry_bulb_c"]!;
        Assert.InRange(plenumC, (double)plan["set_now"]!["ambient_dry_bulb_c"]!, 35);
        Assert.InRange((double)plan["ready"]!["stop_hours"]!, 4, 20);
        Assert.True((DateTimeOffset)plan["ready"]!["p10_at"]! <= (DateTimeOffset)plan["ready"]!["p90_at"]!);
        Assert.NotEmpty(advice["checks"]!.AsArray());
        Assert.NotEmpty(advice["effects"]!.AsArray());
        // The reports hold no rain and begin that day: the answer says so.
        Assert.NotEmpty(advice["assumptions"]!.AsArray());
        TestContext.Current.TestOutputHelper?.WriteLine(advice.ToJsonString());
    }

    private static IReadOnlyList<string[]> Reports(string station) =>
    [
        .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "fixtures", "airways", "reports-1995-03-18.csv"))
            .Select(line => line.Split(','))
            .Where(cells => cells[0] == station),
    ];

    private static DateTimeOffset At(string[] cells) => DateTimeOffset.Parse(cells[2] + "Z", CultureInfo.InvariantCulture);

    private static JsonObject Site(string[] cells, string zone) => new()
    {
        ["name"] = cells[0],
        ["elevation_m"] = Number(cells[5]),
        ["latitude_deg"] = Number(cells[3]),
        ["longitude_deg"] = Number(cells[4]),
        ["time_zone"] = zone,
    };

    /// <summary>Time, dry bulb, dew point and wind as reported.</summary>
    private static string Csv(IEnumerable<string[]> reports) =>
        "time,dry_bulb_c,dew_point_c,wind_m_per_s\n"
        + string.Concat(reports.Select(cells => $"{cells[2]}:00Z,{cells[6]},{cells[7]},{cells[11]}\n"));

    private static JsonArray RainOfThirtyDays(DateTimeOffset until, double rainMmADay) =>
    [
        .. Enumerable.Range(1, 30).Select(day => new JsonObject
        {
            ["from"] = Text(until.AddDays(-day)),
            ["to"] = Text(until.AddDays(1 - day)),
            ["rain_mm"] = rainMmADay,
        }),
    ];

    private static JsonObject Batch(DateTimeOffset loadedAt)
    {
        JsonObject batch = Bodies.BatchOn("trough-1");
        batch["plucked_from"] = Text(loadedAt.AddHours(-5));
        batch["plucked_to"] = Text(loadedAt.AddHours(-1));
        batch["loaded_at"] = Text(loadedAt);
        return batch;
    }

    private static string Text(DateTimeOffset time) => time.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture);

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}

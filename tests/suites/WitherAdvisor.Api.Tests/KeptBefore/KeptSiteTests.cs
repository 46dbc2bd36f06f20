using System.Text.RegularExpressions;
using System.Text;
using System.Text.Json.Nodes;

namespace WitherAdvisor.Api.Tests.KeptBefore;

/// <summary>Pages and exports of the sites in a database of a released version.</summary>
public sealed partial class KeptSiteTests(KeptLofts lofts)
{
    public static TheoryData<string, string> Sites =>
        [.. KeptFile.Versions.SelectMany(version => KeptFile.In(version, "expected/sites").Select(site => (version, site)))];

    public static TheoryData<string> Versions => [.. KeptFile.Versions];

    [Theory]
    [MemberData(nameof(Versions))]
    public async Task Home_shows_the_same_numbers(string version) =>
        Assert.Empty(ShownNumbers.Differences(KeptFile.Text(version, "expected/home.html"), await lofts.Of(version).Text("/")));

    [Theory]
    [MemberData(nameof(Sites))]
    public async Task Log_season_and_calibration_show_the_same_numbers(string version, string site)
    {
        foreach ((string file, string page) in new[] { ("log", "outcomes"), ("season", "season"), ("calibration", "calibration") })
        {
            string then = KeptFile.Text(version, $"expected/sites/{site}/{file}.html");
            Assert.Empty(ShownNumbers.Differences(then, await lofts.Of(version).Text($"/sites/{site}/{page}")));
        }
    }

    [Theory]
    [MemberData(nameof(Sites))]
    public async Task An_export_as_csv_has_the_same_figures(string version, string site)
    {
        var then = ExportedCells.OfCsv(KeptFile.Text(version, $"expected/sites/{site}/export.csv"));
        var now = ExportedCells.OfCsv(await lofts.Of(version).Text($"/v1/sites/{site}/outcomes/export?format=csv"));

        Assert.Empty(ExportedCells.Differences(then, now));
    }

    [Theory]
    [MemberData(nameof(Sites))]
    public async Task An_export_as_Parquet_has_the_same_figures(string version, string site)
    {
        var then = await ExportedCells.OfParquet(KeptFile.Bytes(version, $"expected/sites/{site}/export.parquet"));
        var now = await ExportedCells.OfParquet(await lofts.Of(version).Bytes($"/v1/sites/{site}/outcomes/export?format=parquet"));

        Assert.Empty(ExportedCells.Differences(then, now));
    }

    [Theory]
    [MemberData(nameof(Sites))]
    public async Task Its_batches_and_coefficient_sets_are_the_same(string version, string site)
    {
        foreach ((string file, string path) in new[] { ("batches", "batches?limit=500"), ("coefficient-sets", "coefficient-sets") })
        {
            string then = Renamed.By(Renamed.Codes, KeptFile.Text(version, $"expected/sites/{site}/{file}.json"));
            string now = await lofts.Of(version).Text($"/v1/sites/{site}/{path}");
            Assert.Equal(then, SinceThen().Replace(now, ""));
        }
    }

    [Theory]
    [MemberData(nameof(Versions))]
    public async Task A_row_kept_as_a_plain_file_is_the_advice_that_the_database_holds(string version)
    {
        foreach (string file in KeptFile.In(version, "advice"))
        {
            JsonNode row = JsonNode.Parse(KeptFile.Text(version, "advice/" + file))!;
            Assert.Equal((string)row["answer"]!, await lofts.Of(version).Text($"/v1/advice/{row["id"]}"));
            Assert.Equal((string)row["request"]!, await lofts.Of(version).Text($"/v1/advice/{row["id"]}/request"));
        }
    }

    /// <summary>Members that batches have had since.</summary>
    [GeneratedRegex("\"whole_weight_kg\":[0-9.]+,|,\"lots\":\\[\\]")]
    private static partial Regex SinceThen();
}

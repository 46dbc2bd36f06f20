using System.Text;

namespace WitherAdvisor.Api.Tests.KeptBefore;

/// <summary>The comparisons see one altered number, or they would prove nothing.</summary>
public sealed class AlteredShownTests
{
    private const string Version = "0.1.0";

    private static readonly string Page = Encoding.UTF8.GetString(
        KeptBatch.Of(Version).Single(batch => batch.Folder.EndsWith("/running-shared", StringComparison.Ordinal)).Shown("page.html"));

    /// <summary>As it is shown now: without what the model of then said of its own.</summary>
    private static readonly string Shown = ShownNumbers.WithoutSensitivity(Page);

    [Theory]
    [InlineData("900 kg green", "902 kg green", "(head)")]
    [InlineData(">27.5 <small>", ">27.7 <small>", "set")]
    [InlineData("To rolling <span class=\"when\">Tue 21:55", "To rolling <span class=\"when\">Tue 22:01", "ready")]
    [InlineData("1347.5 kg.</li>", "1347.7 kg.</li>", "lots")]
    [InlineData(">54 kW<", ">56 kW<", "settings")]
    [InlineData("649 kg or less", "647 kg or less", "checks")]
    [InlineData("&#x2212;1.1 %", "1.1 %", "why")]
    [InlineData("44.6 of the 60", "44.8 of the 60", "assumed")]
    public void One_altered_number_of_a_page_is_a_difference(string shown, string altered, string part)
    {
        Assert.Equal(2, Page.Split(shown).Length);

        string difference = Assert.Single(ShownNumbers.Differences(Page.Replace(shown, altered, StringComparison.Ordinal), Shown));

        Assert.StartsWith(part + ":", difference, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lost_number_and_a_lost_part_are_differences()
    {
        Assert.Single(ShownNumbers.Differences(Page, Shown.Replace(">54 kW<", "><", StringComparison.Ordinal)));
        Assert.Single(ShownNumbers.Differences(Page, Shown.Replace("aria-labelledby=\"checks\"", "", StringComparison.Ordinal)), line => line.StartsWith("checks: the part is gone", StringComparison.Ordinal));
    }

    [Fact]
    public void Other_words_about_the_same_numbers_are_no_difference() =>
        Assert.Empty(ShownNumbers.Differences(Page, Shown.Replace("it runs ahead", "it is ahead of the plan", StringComparison.Ordinal)));

    [Fact]
    public void An_altered_cell_a_lost_column_and_a_lost_row_of_an_export_are_differences()
    {
        string csv = KeptFile.Text(Version, "expected/sites/old-valley/export.csv");
        var then = ExportedCells.OfCsv(csv);
        Assert.Empty(ExportedCells.Differences(then, then));

        Assert.Equal("row 1, green_weight_kg: was 900, is 901", Assert.Single(ExportedCells.Differences(then, Changed(then, "green_weight_kg", "901"))));
        Assert.Equal("row 1, ready_p90_hours: the column is gone", Assert.Single(ExportedCells.Differences(then, Changed(then, "ready_p90_hours", null))));
        Assert.Single(ExportedCells.Differences(then, [.. then.Skip(1)]));
    }

    [Fact]
    public async Task An_altered_number_of_a_Parquet_export_is_a_difference()
    {
        var then = await ExportedCells.OfParquet(KeptFile.Bytes(Version, "expected/sites/old-valley/export.parquet"));

        Assert.Equal(KeptFile.Text(Version, "expected/sites/old-valley/export.csv").Split("\r\n").Length - 2, then.Count);
        Assert.Equal("row 1, green_weight_kg: was 900, is 901", Assert.Single(ExportedCells.Differences(then, Changed(then, "green_weight_kg", "901"))));
    }

    /// <summary>The same rows with one cell of the first changed, or taken away.</summary>
    private static IReadOnlyList<IReadOnlyDictionary<string, string>> Changed(
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows, string column, string? value)
    {
        Dictionary<string, string> first = rows[0].ToDictionary(cell => cell.Key, cell => cell.Value, StringComparer.Ordinal);
        first.Remove(column);
        if (value is not null)
        {
            first[column] = value;
        }

        return [first, .. rows.Skip(1)];
    }
}

using WitherAdvisor.Api.ModelCard;
using WitherAdvisor.Documentation;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Tests.ModelCard;

/// <summary>The card in the repository is the one that the service shows.</summary>
public sealed class ModelCardDocumentTests
{
    [Fact]
    public async Task The_committed_card_is_the_one_of_the_program()
    {
        string path = RepositoryFiles.InRoot("src/WitherAdvisor/MODEL-CARD.md");
        if (Environment.GetEnvironmentVariable("UPDATE_MODEL_CARD") == "1")
        {
            await File.WriteAllTextAsync(path, CardDocument.Markdown, TestContext.Current.CancellationToken);
        }

        string committed = await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken);
        Assert.True(committed == CardDocument.Markdown, "src/WitherAdvisor/MODEL-CARD.md is not the program's: run this test with UPDATE_MODEL_CARD=1 and look at the change.");
    }

    [Fact]
    public void No_gap_is_left_open() => Assert.DoesNotContain("{{", CardDocument.Markdown, StringComparison.Ordinal);

    [Fact]
    public void Every_row_of_a_table_has_as_many_cells_as_its_head()
    {
        string[][] tables = [.. CardDocument.Markdown.Split("\n\n").Where(block => block.StartsWith('|')).Select(block => block.TrimEnd().Split('\n'))];

        Assert.True(tables.Length > 10);
        Assert.All(tables, table => Assert.All(table, row => Assert.Equal(Bars(table[0]), Bars(row))));
    }

    [Fact]
    public void Every_check_that_the_card_names_is_there() =>
        Assert.All(ModelCheck.All, check => Assert.True(Path.Exists(RepositoryFiles.InRoot(check.Where)), check.Where));

    [Fact]
    public void Codes_are_given_once()
    {
        Assert.Distinct(ModelEquations.All.Select(equation => equation.Code));
        Assert.Distinct(ModelConstants.All.Select(constant => constant.Code));
        Assert.Distinct(Unknown.All.Select(unknown => unknown.Code));
        Assert.Distinct(ModelCheck.All.Select(check => check.Code));
    }

    [Theory]
    [InlineData(0.6, "1", "60 %")]
    [InlineData(0.006, "m/s", "6 mm/s")]
    [InlineData(0.2286, "m³/s per m²", "0.2286 m³/s per m²")]
    [InlineData(48, "", "48")]
    public void Numbers_stand_in_units_that_read_well(double value, string unit, string text) =>
        Assert.Equal(text, ShownNumber.Of(value, unit).Text);

    private static int Bars(string row) => row.Replace("\\|", "", StringComparison.Ordinal).Count(letter => letter == '|');
}

using System.Runtime.CompilerServices;
using System.Text;
using System.Text.Json.Nodes;
using WitherAdvisor.Api.Batches;
using WitherAdvisor.Api.Outcomes;
using WitherAdvisor.Api.Tests.Testing;
using WitherAdvisor.Fields;
using WitherAdvisor.LogFiles.Columns;

namespace WitherAdvisor.Api.Tests.Outcomes;

public sealed class DataDictionaryTests(RunningService service)
{
    [Fact]
    public async Task The_committed_dictionary_is_the_served_one()
    {
        string served = Document((await service.Caller.Get("/v1/outcomes/dictionary")).Expect(200).Json.AsArray());
        string path = Committed();
        if (Environment.GetEnvironmentVariable("UPDATE_DICTIONARY") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            await File.WriteAllTextAsync(path, served, TestContext.Current.CancellationToken);
        }

        Assert.True(
            await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken) == served,
            "openapi/outcome-columns.md is not what the service serves: run this test with UPDATE_DICTIONARY=1 and look at the change.");
    }

    [Fact]
    public void Every_number_has_a_unit_and_every_column_a_meaning()
    {
        Assert.All(LogColumn.All.Where(column => column.Type == typeof(double) || column.Meaning.Numbers), column => Assert.NotNull(column.UnitSymbol));
        Assert.All(LogColumn.All, column => Assert.EndsWith(".", column.Meaning.Text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(typeof(BatchRequest))]
    [InlineData(typeof(LabelRequest))]
    [InlineData(typeof(OutcomeRequest))]
    [InlineData(typeof(LayersRequest))]
    public void A_column_allows_what_the_field_of_its_name_allows(Type request)
    {
        List<(FieldShape Field, LogColumn Column)> same =
        [
            .. ((ObjectShape)Shapes.Of(request)).Fields.Join(LogColumn.All, field => field.Name, column => column.Name, (field, column) => (field, column))
                .Where(pair => pair.field.Shape is not ListShape),
        ];

        Assert.True(same.Count >= 3);
        Assert.All(same, pair => Assert.Equal(pair.Field.Shape.Allowed, pair.Column.Field.Shape.Allowed));
    }

    private static string Document(JsonArray columns)
    {
        StringBuilder text = new();
        text.Append("""
            # Columns of the log of outcomes

            Of the CSV and Parquet exports and of the CSV import; generated from the same definitions (`/v1/outcomes/dictionary`).
            An empty cell is unknown, never 0. Times are RFC 3339; an import also takes the site's own clock, as 2026-03-01 13:00.
            In CSV a text that a spreadsheet would run as a formula has an apostrophe before it, which an import takes away again.

            | column | type | unit | meaning | allowed |
            |---|---|---|---|---|

            """);
        foreach (JsonNode? column in columns)
        {
            string needed = (bool)column!["required"]! ? " Needed." : (bool)column["follows"]! ? " Follows from others." : "";
            text.Append($"| `{column["name"]}` | {column["type"]} | {column["unit"]} | {column["meaning"]}{needed} | {((string)column["allowed"]!).Replace("|", "\\|", StringComparison.Ordinal)} |\n");
        }

        return text.ToString().ReplaceLineEndings("\n");
    }

    private static string Committed([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../../openapi/outcome-columns.md"));
}

using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.ReferenceChecks.Report;
using WitherAdvisor.ReferenceChecks.Runners;
using Xunit;

namespace WitherAdvisor.ReferenceChecks.Tests;

/// <summary>What the command prints, held to its tolerances and to the document in the repository.</summary>
public sealed class TableTests(WholeTable table) : IClassFixture<WholeTable>
{
    private const string UpdateVariable = "UPDATE_CHECKS";

    /// <summary>Of CaseFiles.All, psychrolib, the wet bulb and the bed: fewer would mean that some were not looked at.</summary>
    private const int LiveSections = 3;

    [Fact]
    public void Every_row_is_within_its_tolerance()
    {
        string[] outside = [.. table.Sections.SelectMany(section => section.Rows
            .Where(row => !row.Passes)
            .Select(row => $"{section.Title}: {row.Check} at {row.Where}: ours {row.Ours}, theirs {row.Theirs}"))];

        Assert.Empty(outside);
    }

    [Fact]
    public void Every_section_has_rows()
    {
        Assert.Equal(CaseFiles.All.Count + LiveSections, table.Sections.Count);
        Assert.All(table.Sections, section => Assert.NotEmpty(section.Rows));
    }

    [Fact]
    public void The_live_grids_are_as_wide_as_their_titles_say()
    {
        Assert.InRange(Rows("psychrolib run over").Count(row => row.Check == "wet_bulb_c"), 2_000, 10_000);
        Assert.InRange(Rows("wet bulb by halving").Count, 30_000, 100_000);
        Assert.InRange(Rows("random withers").Count(row => row.Check.StartsWith("hours to target, as shown", StringComparison.Ordinal)), 950, 1_000);
    }

    [Fact]
    public void Every_case_file_has_a_runner_and_every_file_beside_one_is_a_case_file()
    {
        Assert.NotEmpty(CaseFiles.All);
        Assert.All(CaseFiles.All, file => Assert.True(AllRunners.Know(file.Runner), $"{file.Folder}/{file.Data} wants {file.Runner}"));
        Assert.Empty(CaseFiles.WithoutDescription);
    }

    [Fact]
    public void Every_row_says_why_its_tolerance_is_what_it_is_and_whose_its_value_is() =>
        Assert.All(table.Sections.SelectMany(section => section.Rows), row =>
        {
            Assert.False(string.IsNullOrWhiteSpace(row.Tolerance.Reason), row.Check);
            Assert.False(string.IsNullOrWhiteSpace(row.Source), row.Check);
        });

    [Fact]
    public void The_document_is_what_the_command_prints()
    {
        string path = RepositoryFiles.InRoot(AllChecks.Document);
        string now = MarkdownReport.Write(table.Sections, verbose: false);
        if (Environment.GetEnvironmentVariable(UpdateVariable) == "1")
        {
            File.WriteAllText(path, now);
        }

        Assert.True(
            File.ReadAllText(path) == now,
            $"{AllChecks.Document} is not what a new run gives: look at why, then rewrite it with {UpdateVariable}=1.");
    }

    private IReadOnlyList<CheckRow> Rows(string title) =>
        table.Sections.Single(section => section.Title.Contains(title, StringComparison.Ordinal)).Rows;
}

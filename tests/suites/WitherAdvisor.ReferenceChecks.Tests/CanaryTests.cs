using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.ReferenceChecks.Report;
using WitherAdvisor.ReferenceChecks.Runners;
using Xunit;

namespace WitherAdvisor.ReferenceChecks.Tests;

/// <summary>The table must be able to fail.</summary>
public sealed class CanaryTests
{
    [Theory]
    [InlineData("absolute", 1.011, false)]
    [InlineData("absolute", 1.009, true)]
    [InlineData("relative", 0.989, false)]
    [InlineData("at_most", 1.02, false)]
    [InlineData("at_most", 0.5, true)]
    [InlineData("at_least", 0.98, false)]
    [InlineData("at_least", 2, true)]
    [InlineData("absolute", double.NaN, false)]
    [InlineData("at_most", double.NegativeInfinity, false)]
    public void A_value_outside_its_tolerance_fails(string kind, double ours, bool passes) =>
        Assert.Equal(passes, new CheckRow("canary", "", "", ours, 1, Tolerance.Of(kind, 0.01, "canary")).Passes);

    [Fact]
    public void A_failing_row_is_the_one_a_long_section_shows()
    {
        CheckRow[] rows = [.. Enumerable.Range(0, 50).Select(i => Row(i, i == 37 ? 2 : 1))];

        string report = MarkdownReport.Write([new Section("canary", "", rows)], verbose: false);

        Assert.Contains("1 outside their tolerance", report, StringComparison.Ordinal);
        Assert.Contains("place 37", report, StringComparison.Ordinal);
        Assert.Contains("**FAIL**", report, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_file_that_names_no_runner_there_is_stops_the_run() =>
        Assert.Throws<InvalidDataException>(() => AllRunners.Run(CaseFiles.All[0] with { Runner = "nobody" }));

    [Fact]
    public void A_case_that_lacks_an_input_stops_the_run() =>
        Assert.Throws<InvalidDataException>(() => new Inputs(new Dictionary<string, string>()).Number("t"));

    private static CheckRow Row(int place, double ours) =>
        new("canary", $"place {place}", "canary", ours, 1, Tolerance.Of("absolute", 0.01, "canary"));
}

using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.ReferenceChecks.Report;
using WitherAdvisor.ReferenceChecks.Runners;
using Xunit;

namespace WitherAdvisor.Tests;

/// <summary>Every file of reference cases under fixtures/, file by file; the whole table is printed by WitherAdvisor.ReferenceChecks.</summary>
public sealed class ReferenceCaseTests
{
    public static TheoryData<string> Titles => [.. CaseFiles.All.Select(file => file.Title)];

    [Theory]
    [MemberData(nameof(Titles))]
    public void Ours_is_within_the_tolerance_of_theirs(string title)
    {
        Section section = AllRunners.Run(CaseFiles.All.Single(file => file.Title == title));

        Assert.NotEmpty(section.Rows);
        Assert.All(section.Rows, row => Assert.True(row.Passes, $"{row.Check} at {row.Where}: ours {row.Ours}, theirs {row.Theirs}"));
    }
}

using Xunit;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>Which project may stand on what.</summary>
public sealed class ReferenceTests
{
    private const string Web = "WitherAdvisor.Api";

    [Fact]
    public void The_pure_library_refers_to_no_package_and_no_other_project()
    {
        SourceProject pure = SourceProject.Named("WitherAdvisor");

        Assert.Empty(pure.Packages);
        Assert.Empty(pure.Projects);
        Assert.Empty(pure.Frameworks);
        Assert.All(pure.References(), reference => Assert.StartsWith("System.", reference, StringComparison.Ordinal));
    }

    [Fact]
    public void Only_the_web_project_knows_of_the_web()
    {
        IReadOnlyList<SourceProject> others = [.. SourceProject.All().Where(project => project.Name != Web)];

        Assert.All(others, project => Assert.DoesNotContain(project.References(), IsOfTheWeb));
        Assert.All(others, project => Assert.DoesNotContain(project.Frameworks, IsOfTheWeb));
        Assert.All(others, project => Assert.Equal("Microsoft.NET.Sdk", project.Sdk));
        Assert.Contains(SourceProject.Named(Web).References(), IsOfTheWeb);
    }

    [Fact]
    public void What_a_project_file_says_is_what_the_test_reads()
    {
        Assert.Contains("WitherAdvisor", SourceProject.Named("WitherAdvisor.Recalibration").Projects);
        Assert.Contains("MathNet.Numerics", SourceProject.Named("WitherAdvisor.Recalibration").Packages);
        Assert.Contains("MathNet.Numerics", SourceProject.Named("WitherAdvisor.Recalibration").References());
    }

    private static bool IsOfTheWeb(string reference) => reference.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal);
}

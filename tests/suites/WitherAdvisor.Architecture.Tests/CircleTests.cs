using Xunit;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>Namespaces form a one-way chain: a child that uses its parent's types is not used by the parent.</summary>
public sealed class CircleTests
{
    /// <summary>Every project.</summary>
    public static readonly TheoryData<string> Free =
    [
        "WitherAdvisor", "WitherAdvisor.Api", "WitherAdvisor.Export", "WitherAdvisor.Fields", "WitherAdvisor.LogFiles", "WitherAdvisor.Loft",
        "WitherAdvisor.Recalibration", "WitherAdvisor.Store.Sqlite", "WitherAdvisor.WeatherFeeds", "WitherAdvisor.Words",
    ];

    private const string Canaries = "WitherAdvisor.Architecture.Tests.Canaries.";

    [Theory]
    [MemberData(nameof(Free))]
    public void No_namespace_can_be_reached_from_itself(string project) =>
        Assert.Empty(Circles.In(NamespaceUses.In(SourceProject.Named(project).Assembly)));

    [Theory]
    [MemberData(nameof(Free))]
    public void There_are_namespaces_to_judge(string project) =>
        Assert.NotEmpty(NamespaceUses.In(SourceProject.Named(project).Assembly));

    [Fact]
    public void A_circle_that_closes_in_method_bodies_is_found()
    {
        string circle = Assert.Single(Circles.In(NamespaceUses.In(
            typeof(CircleTests).Assembly.Location, name => name.StartsWith(Canaries, StringComparison.Ordinal))));

        Assert.StartsWith($"{Canaries}Above, {Canaries}Below: ", circle, StringComparison.Ordinal);
        Assert.DoesNotContain("Beside", circle, StringComparison.Ordinal);
    }
}

using System.Text.RegularExpressions;
using WitherAdvisor.Air;
using Xunit;

namespace WitherAdvisor.Tests;

/// <summary>Rules of the house that the compiler does not hold.</summary>
public sealed partial class ArchitectureTests
{
    private const int MostLines = 300;

    private static readonly string PureLibrary = typeof(AirState).Assembly.Location;

    private static readonly string[] Drawers =
    [
        "Helper", "Helpers", "Util", "Utils", "Utilities", "Common", "Core", "Misc", "Manager", "Managers", "Services", "Extensions",
    ];

    [Fact]
    public void The_pure_library_stands_on_the_framework_alone()
    {
        IReadOnlyList<string> references = ForbiddenUses.References(PureLibrary);

        Assert.NotEmpty(references);
        Assert.All(references, reference => Assert.StartsWith("System.", reference, StringComparison.Ordinal));
    }

    [Fact]
    public void The_pure_library_uses_no_io_no_clock_no_randomness_and_no_threads() =>
        Assert.Empty(ForbiddenUses.In(PureLibrary));

    [Fact]
    public void The_check_that_finds_nothing_in_the_pure_library_finds_each_of_these()
    {
        IReadOnlyList<string> found = ForbiddenUses.In(typeof(ForbiddenUsesCanary).Assembly.Location);

        Assert.Empty(ForbiddenUsesCanary.MustBeFound.Except(found, StringComparer.Ordinal));
    }

    [Fact]
    public void No_source_file_is_longer_than_a_reader_can_hold() =>
        Assert.DoesNotContain(SourceFiles(), file => File.ReadLines(InRoot(file)).Count() > MostLines);

    [Fact]
    public void A_source_file_holds_one_public_type() =>
        Assert.DoesNotContain(SourceFiles(), file => PublicType().Count(File.ReadAllText(InRoot(file))) > 1);

    [Fact]
    public void Nothing_is_put_into_a_drawer() =>
        Assert.DoesNotContain(RepositoryFiles.Under("src", "*"), file =>
            file.Split('/', '.').Any(name => Drawers.Any(drawer => name.EndsWith(drawer, StringComparison.Ordinal))));

    [Fact]
    public void There_are_source_files_to_judge() => Assert.True(SourceFiles().Count() > 30);

    private static IEnumerable<string> SourceFiles() => RepositoryFiles.Under("src", "*.cs");

    private static string InRoot(string file) => RepositoryFiles.InRoot(file);

    // Namespaces are file-scoped, so a type of the namespace starts its line.
    [GeneratedRegex(@"^public [a-z ]*\b(class|record|struct|interface|enum|delegate)\b", RegexOptions.Multiline | RegexOptions.ExplicitCapture, Patience.Milliseconds)]
    private static partial Regex PublicType();
}

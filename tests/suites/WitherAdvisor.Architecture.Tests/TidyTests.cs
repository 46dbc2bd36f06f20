using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Xunit;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>Style that a machine can judge.</summary>
public sealed partial class TidyTests
{
    private const int MostInvariants = 25;

    public static TheoryData<string> Documents => [.. DocumentNames.Documents];

    public static TheoryData<string> Calls => [.. Directory.EnumerateFiles(RepositoryFiles.InRoot("openapi", "requests"))
        .Select(file => $"openapi/requests/{Path.GetFileName(file)}").Order(StringComparer.Ordinal)];

    private static IReadOnlyList<string> Sources { get; } = [.. RepositoryFiles.Under("src", "*.cs")];

    [Theory]
    [MemberData(nameof(Documents))]
    public void What_a_document_names_is_there(string document) =>
        Assert.Empty(DocumentNames.Missing(document, RepositoryFiles.Read(document)));

    [Theory]
    [InlineData("[gone](gone.md)", "gone.md")]
    [InlineData("[gone](README.md#no-such-part)", "README.md#no-such-part")]
    [InlineData("`src/Gone`", "src/Gone")]
    [InlineData("`bash tests/gone`", "tests/gone")]
    [InlineData("`TidyTests.Gone`", "TidyTests.Gone")]
    [InlineData("`GoneTests`", "GoneTests")]
    public void What_is_not_there_is_found(string text, string missing) =>
        Assert.Equal(missing, Assert.Single(DocumentNames.Missing("README.md", text)));

    [Fact]
    public void What_is_there_may_be_named() => Assert.Empty(DocumentNames.Missing(
        "src/ADDING.md", "[a](../README.md#run-it) `tests/run` `src/<project>` `TidyTests.What_is_there_may_be_named` https://example.org\n```\n`src/Gone`\n```\n"));

    [Fact]
    public void There_are_no_more_invariants_than_a_reader_keeps_in_mind_and_each_names_its_test()
    {
        IReadOnlyList<Match> invariants = Invariant().Matches(RepositoryFiles.Read("DEVELOPERS.md"));

        Assert.InRange(invariants.Count, 1, MostInvariants);
        Assert.All(invariants, row => Assert.Matches(@"\| `\w+\.\w+`(, `\w+\.\w+`)* \|$", row.Value));
    }

    [Fact]
    public void No_line_of_code_is_wider_than_a_screen() =>
        Assert.Empty(Sources.SelectMany(file => CodeShape.WideLines(RepositoryFiles.Read(file))
            .Skip(ShapeExceptions.WideLines.GetValueOrDefault(Path.GetFileName(file)))
            .Select(line => $"{file}:{line}")));

    [Fact]
    public void A_wide_line_is_found_and_a_long_sentence_is_none()
    {
        string words = new('x', CodeShape.MostColumns);
        string wide = $"class C {{ int M() => {string.Join(" + ", Enumerable.Repeat("1", CodeShape.MostColumns))}; }}";

        Assert.Equal(2, Assert.Single(CodeShape.WideLines($"// narrow\n{wide}\n")));
        Assert.Equal(1, Assert.Single(CodeShape.WideLines($"// {words}\n")));
        Assert.Empty(CodeShape.WideLines($"class C {{ string S => \"{words}\"; }}\n/// {words}\n"));
    }

    [Fact]
    public void No_method_is_longer_than_a_reader_can_hold() =>
        Assert.DoesNotContain(LongMethods(), method => method.Lines > ShapeExceptions.LongMethods.GetValueOrDefault(method.Name));

    [Fact]
    public void Each_exception_is_needed_and_gets_no_bigger_than_it_is()
    {
        (string Name, int Lines)[] methods = [.. LongMethods()];

        Assert.All(ShapeExceptions.LongMethods, one => Assert.Contains(methods, method => method.Name == one.Key && method.Lines <= one.Value));
        Assert.All(ShapeExceptions.WideLines, one => Assert.Contains(Sources, file =>
            Path.GetFileName(file) == one.Key && CodeShape.WideLines(RepositoryFiles.Read(file)).Count() == one.Value));
    }

    [Fact]
    public void A_long_method_is_found()
    {
        string body = string.Concat(Enumerable.Repeat("        M();\n", CodeShape.MostMethodLines));

        Assert.Equal(("M", CodeShape.MostMethodLines + 3), Assert.Single(CodeShape.LongMethods($"class C\n{{\n    void M()\n    {{\n{body}    }}\n}}\n")));
    }

    [Theory]
    [InlineData("src")]
    [InlineData("tests")]
    public void No_file_is_longer_than_a_reader_can_hold(string folder) =>
        Assert.DoesNotContain(RepositoryFiles.Under(folder, "*.cs"), file => RepositoryFiles.Read(file).AsSpan().Count('\n') > CodeShape.MostFileLines);

    [Fact]
    public void No_name_and_no_comment_says_a_word_that_is_gone() =>
        Assert.Empty(Sources.SelectMany(file => GoneWords.In(RepositoryFiles.Read(file)).Select(word => $"{file}: {word}")));

    [Theory]
    [InlineData("class AdviceManager;", "manager")]
    [InlineData("class C { /* two advices */ }", "advices")]
    [InlineData("/// <summary>Leaf, e.g. wet.</summary>\nclass C;", "e.g.")]
    [InlineData("// Done in order to dry.\nclass C;", "in order to")]
    public void A_word_that_is_gone_is_found(string source, string word) =>
        Assert.StartsWith($"\"{word}\": say ", Assert.Single(GoneWords.In(source)), StringComparison.Ordinal);

    [Fact]
    public void Words_within_words_and_in_strings_are_let_be() =>
        Assert.Empty(GoneWords.In("// Managers' advice is robustly told.\nclass Misch { string S => \"utilize\"; }"));

    [Fact]
    public void Nothing_is_left_to_be_done() => Assert.Empty(Sources
        .Concat(RepositoryFiles.Under("tests", "*.cs").Where(file => !file.StartsWith("tests/suites/WitherAdvisor.Architecture.Tests/", StringComparison.Ordinal)))
        .SelectMany(file => GoneWords.UnfinishedIn(RepositoryFiles.Read(file)).Select(mark => $"{file}: {mark}")));

    [Fact]
    public void What_is_left_to_be_done_is_found() =>
        Assert.Equal(GoneWords.Unfinished, GoneWords.UnfinishedIn(string.Join(": later\n// ", GoneWords.Unfinished)));

    [Fact]
    public void Every_project_is_in_the_solution()
    {
        string[] projects =
        [
            .. new[] { "src", "tests" }.SelectMany(folder =>
                Directory.EnumerateFiles(RepositoryFiles.InRoot(folder), "*.csproj", SearchOption.AllDirectories))
                .Select(file => Path.GetRelativePath(RepositoryFiles.Root, file).Replace('\\', '/')),
        ];
        string solution = RepositoryFiles.Read("WitherAdvisor.sln").Replace('\\', '/');

        Assert.NotEmpty(projects);
        Assert.DoesNotContain(projects, project => !solution.Contains($"\"{project}\"", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Calls))]
    public void Every_call_in_a_file_of_requests_is_in_the_document(string file)
    {
        string text = RepositoryFiles.Read(file);

        Assert.NotEqual(0, HttpFile.Count(text));
        Assert.Empty(HttpFile.Faults(text, JsonNode.Parse(RepositoryFiles.Read("openapi/witheradvisor.v1.json"))!));
    }

    [Theory]
    [InlineData("GET {{host}}/v1/gone\n")]
    [InlineData("PUT {{host}}/v1/sites\n")]
    [InlineData("POST {{host}}/v1/advice\nContent-Type: application/json\n\n{ \"site\": }\n")]
    public void A_call_that_no_service_takes_is_found(string text) =>
        Assert.Single(HttpFile.Faults(text, JsonNode.Parse(RepositoryFiles.Read("openapi/witheradvisor.v1.json"))!));

    private static IEnumerable<(string Name, int Lines)> LongMethods() => Sources.SelectMany(file => CodeShape.LongMethods(RepositoryFiles.Read(file))
        .Select(method => ($"{Path.GetFileNameWithoutExtension(file)}.{method.Name}", method.Lines)));

    [GeneratedRegex(@"^\| \d+ \|.*$", RegexOptions.Multiline, 1000)]
    private static partial Regex Invariant();
}

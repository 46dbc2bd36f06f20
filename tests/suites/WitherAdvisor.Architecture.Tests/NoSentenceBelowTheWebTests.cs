using Xunit;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>Below the web there are codes and their arguments; the words of each language stand above.</summary>
public sealed class NoSentenceBelowTheWebTests
{
    private const int WordsOfASentence = 4;

    public static TheoryData<string> Projects =>
    [
        "WitherAdvisor", "WitherAdvisor.Recalibration", "WitherAdvisor.WeatherFeeds", "WitherAdvisor.Loft", "WitherAdvisor.Store.Sqlite",
    ];

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_string_is_a_sentence(string project)
    {
        string[] files = [.. RepositoryFiles.Under($"src/{project}", "*.cs")];

        Assert.NotEmpty(files);
        Assert.Empty(files.SelectMany(file => Sentences(file, RepositoryFiles.Read(file))));
    }

    [Theory]
    [InlineData("""string Said => "The leaf is wet.";""")]
    [InlineData("""string Said(int hours) => $"Rain is unknown for {hours}";""")]
    [InlineData("""string Said(int hours) => $"{(hours > 0 ? "it was taken from before" : "")}";""")]
    [InlineData("string Said => \"\"\"\n    The leaf\n    is wet.\n    \"\"\";")]
    [InlineData("""string Said => "Select where the leaf goes from here";""")]
    [InlineData("""void Say(Log log) => log.Add("The leaf is too wet");""")]
    [InlineData("""Refused Why => new Refused("The leaf is too wet");""")]
    public void A_sentence_is_found_wherever_it_stands(string member) =>
        Assert.Single(Sentences("src/WitherAdvisor.Store.Sqlite/Canary.cs", $"class Canary {{ {member} }}"));

    [Fact]
    public void A_description_in_words_is_found_beside_formulas_and_sources() => Assert.Single(Sentences(
        "src/WitherAdvisor/Documentation/Canary.cs",
        """class Canary { (string, string) Of = ("FAO-56, table 12", "Share of rain that strikes the leaf"); }"""));

    [Theory]
    [InlineData("""void Never() => throw new InvalidOperationException("This can never be so.");""")]
    [InlineData("""Exception Never => new InvalidOperationException("This can never be so.");""")]
    [InlineData("""void Say(ILogger logger) => logger.LogWarning("The feed gave nothing at {Time}", 1);""")]
    [InlineData("""const string FindSql = "SELECT Id, Name FROM Site WHERE Id = @id";""")]
    [InlineData("""const string Columns = "Id, Name, Zone, Elevation";""")]
    [InlineData("""string Code => "air_not_known";""")]
    public void What_no_reader_of_an_answer_reads_may_be_written_out(string member) =>
        Assert.Empty(Sentences("src/WitherAdvisor.Store.Sqlite/Canary.cs", $"class Canary {{ {member} }}"));

    [Fact]
    public void Each_exception_is_needed()
    {
        (string File, SourceText Text)[] all =
        [
            .. Projects.SelectMany(project => RepositoryFiles.Under($"src/{project.Data}", "*.cs"))
                .SelectMany(file => Long(RepositoryFiles.Read(file)).Select(text => (file, text))),
        ];

        Assert.All(SentenceExceptions.All, one => Assert.Contains(all, text => one.Value(text.File, text.Text)));
    }

    private static IEnumerable<string> Sentences(string file, string source) => Long(source)
        .Where(text => !SentenceExceptions.All.Values.Any(allowed => allowed(file, text)))
        .Select(text => $"{file}: {text.Spoken}");

    private static IEnumerable<SourceText> Long(string source) => SourceText.In(source).Where(text => text.Words >= WordsOfASentence);
}

using System.Text.RegularExpressions;

namespace WitherAdvisor.Api.Tests.Wording;

/// <summary>The sources of the pages: also what no test happens to show is in the table.</summary>
public sealed partial class WordsInSourceTests
{
    private const string Pages = "src/WitherAdvisor.Api/Pages";

    /// <summary>Our name, formats and units.</summary>
    private static readonly string[] SameEverywhere = ["WitherAdvisor", "CSV", "Parquet", "ET", "kg", "lb", "kW", "mm", "min"];

    /// <summary>Where a page shows what the model, the interface or a feed says in English, and how often: named, so that none is added unseen.</summary>
    private static readonly Dictionary<string, int> InEnglish = new(StringComparer.Ordinal)
    {
        ["Forms/RowFault.razor"] = 1, // a cell that does not fit another, or what is kept
        ["Model/ModelPage.razor"] = 1, // the model card is an English document
    };

    /// <summary>A header, a class of the style sheet, and what the interface refuses, which it says in English.</summary>
    private static readonly string[] NotOfThePage = ["\"default-src ", "\"rain forecast\"", "\"{} was given; {} is allowed.\""];

    [Fact]
    public void No_component_writes_words_of_its_own() =>
        Assert.Empty(Components().SelectMany(file => Written(Read(file)).Select(word => $"{file}: {word}")));

    [Fact]
    public void Words_that_a_component_writes_are_found()
    {
        Assert.Equal(["Loaded at"], Written("<h2 id=\"x\">Loaded at</h2>\n@code { string x = \"<b>yes</b>\"; }"));
        Assert.Equal(["Loaded at"], Written("<TimeField Form=\"Form\" Label=\"Loaded at\" />"));
        Assert.Equal(["Other times"], Written("<nav aria-label=\"Other times\">@W[\"weather.now\"]</nav>"));
        Assert.Equal(["from", "to"], Written("<p>from @From to <b>@W.Say(\"x.y\", (\"a\", b))</b></p>"));
    }

    [Fact]
    public void No_sentence_is_put_together_in_the_code_of_a_page() => Assert.Empty(
        RepositoryFiles.Under(Pages, "*.cs").SelectMany(file => Sentences(Read(file)).Select(sentence => $"{file}: {sentence}")));

    [Fact]
    public void A_sentence_put_together_in_code_is_found() => Assert.Equal(
        ["\"not after {}\""], Sentences("// \"of a comment too\"\nRefuse($\"not after {now}\"); throw new X(\"a fault of ours\");"));

    [Fact]
    public void What_pages_leave_in_English_is_named() => Assert.Equal(
        InEnglish.OrderBy(place => place.Key, StringComparer.Ordinal),
        Components().Select(file => KeyValuePair.Create(file[(Pages.Length + 1)..], Read(file).Split("lang=\"en\"").Length - 1))
            .Where(place => place.Value > 0).OrderBy(place => place.Key, StringComparer.Ordinal));

    private static IEnumerable<string> Components() => RepositoryFiles.Under(Pages, "*.razor");

    private static string Read(string file) => RepositoryFiles.Read(file);

    private static IEnumerable<string> Written(string component)
    {
        string markup = CodeAndComments().Replace(component, "");
        IEnumerable<string> texts = Texts().Matches(markup).Select(found => found.Groups["text"].Value)
            .SelectMany(text => Words().Matches(Expressions().Replace(text, "|")).Select(found => found.Value.Trim()));
        IEnumerable<string> attributes = Spoken().Matches(markup).Select(found => found.Groups["text"].Value);
        return texts.Concat(attributes).Where(text => !SameEverywhere.Contains(text));
    }

    private static IEnumerable<string> Sentences(string code) =>
        code.Split('\n')
            .Where(line => !line.TrimStart().StartsWith("//", StringComparison.Ordinal))
            .SelectMany(line => Literals().Matches(line.Split("throw ")[0]).Select(found => Filled().Replace(found.Value, "{}")))
            .Where(literal => !NotOfThePage.Any(known => literal.StartsWith(known, StringComparison.Ordinal)))
            .Where(literal => TwoWords().IsMatch(literal));

    [GeneratedRegex(@"@code\s*\{.*$|@\*.*?\*@", RegexOptions.Singleline, 5000)]
    private static partial Regex CodeAndComments();

    /// <summary>On one line between two tags.</summary>
    [GeneratedRegex(@"</?[a-zA-Z][^<>\n]*>(?<text>[^<>\n]*)(?=</?[a-zA-Z])", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Texts();

    [GeneratedRegex(@"@(foreach |if )?\((?>[^()]+|(?<open>\()|(?<-open>\)))*\)|@[\w.]+(\[[^\]]*\]|\((?>[^()]+|(?<deep>\()|(?<-deep>\)))*\))*|&\w+;", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Expressions();

    [GeneratedRegex(@"\p{L}{2,}( \p{L}+)*", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Words();

    [GeneratedRegex(@"\b(Label|Hint|Title|Unit|aria-label|title|placeholder|alt)=""(?<text>[^""@]*\p{L}{3}[^""@]*)""", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Spoken();

    [GeneratedRegex(@"""(\\.|[^""\\])*""", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Literals();

    [GeneratedRegex(@"\{[^{}]*\}", RegexOptions.NonBacktracking)]
    private static partial Regex Filled();

    [GeneratedRegex(@"\p{L}{2,} (\{[^}]*\}|\p{L}{2,})", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex TwoWords();
}

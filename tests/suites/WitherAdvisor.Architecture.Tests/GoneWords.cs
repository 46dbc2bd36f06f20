using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>Words that names and comments do without, each with what to say in its place.</summary>
internal static partial class GoneWords
{
    // No phrase reaches from one name into the next.
    private const string Between = "\n;\n";

    /// <summary>A word goes in here once the last place that said it says something better.</summary>
    public static IReadOnlyDictionary<string, string> Instead { get; } = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase)
    {
        ["helpers"] = "what they do",
        ["utils"] = "what they do",
        ["manager"] = "what it does",
        ["misc"] = "a name for each of them",
        ["dto"] = "request, response or record",
        ["foretold"] = "forecast",
        ["foretell"] = "forecast",
        ["foretells"] = "forecasts",
        ["skin conductance"] = "cuticular conductance",
        ["boundary conductance"] = "boundary-layer conductance",
        ["misjudged"] = "input error, or wrong",
        ["come again"] = "retry after",
        ["sieve"] = "screening",
        ["night ahead"] = "ambient forecast",
        ["held out trial"] = "hold-out validation",
        ["told apart"] = "separated or distinguished",
        ["recipe"] = "inputs (AdviceInputs)",
        ["advices"] = "advice, which has no plural: pieces of advice, recommendations",
        ["percent wither"] = "outturn, loss or moisture on its basis",
        ["utilize"] = "use",
        ["leverage"] = "use",
        ["seamless"] = "what it does",
        ["simply"] = "nothing: leave it out",
        ["obviously"] = "nothing: leave it out",
        ["in order to"] = "to",
        ["e.g."] = "for example",
        ["i.e."] = "that is",
        ["whitelist"] = "allowed",
        ["blacklist"] = "refused",
    };

    /// <summary>Marks of work left undone.</summary>
    public static IReadOnlyList<string> Unfinished { get; } = ["TODO", "FIXME", "HACK"];

    private static readonly Regex Any = OneOf(Instead.Keys, RegexOptions.IgnoreCase);
    private static readonly Regex AnyMark = OneOf(Unfinished, RegexOptions.None);

    /// <summary>Gone words in names and comments, each with what to say.</summary>
    public static IEnumerable<string> In(string source)
    {
        SyntaxNode root = CSharpSyntaxTree.ParseText(source).GetRoot();
        IEnumerable<string> names = root.DescendantTokens().Where(token => token.IsKind(SyntaxKind.IdentifierToken)).Select(token => Apart(token.ValueText));
        IEnumerable<string> comments = root.DescendantTrivia(descendIntoTrivia: false).Where(IsComment).Select(trivia => trivia.ToFullString());
        return Found(Any, string.Join(Between, names.Concat(comments))).Select(word => $"\"{word.ToLowerInvariant()}\": say {Instead[word]}");
    }

    /// <summary>Marks of work left undone in a text.</summary>
    public static IEnumerable<string> UnfinishedIn(string text) => Found(AnyMark, text);

    private static IEnumerable<string> Found(Regex words, string text) =>
        words.Matches(text).Select(found => found.Value).Distinct(StringComparer.OrdinalIgnoreCase);

    private static Regex OneOf(IEnumerable<string> words, RegexOptions options) => new(
        $@"(?<!\w)({string.Join('|', words.Select(Regex.Escape))})(?!\w)",
        options | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(10));

    private static bool IsComment(SyntaxTrivia trivia) => trivia.Kind() is SyntaxKind.SingleLineCommentTrivia or SyntaxKind.MultiLineCommentTrivia
        or SyntaxKind.SingleLineDocumentationCommentTrivia or SyntaxKind.MultiLineDocumentationCommentTrivia;

    private static string Apart(string name) => Hump().Replace(name, " ");

    [GeneratedRegex("(?<=[a-z0-9])(?=[A-Z])", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Hump();
}

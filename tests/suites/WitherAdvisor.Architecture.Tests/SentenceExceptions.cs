using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Documentation;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>Texts of four words and more that may stand below the web, because no reader of a page or an answer is meant to read them in their language.</summary>
internal static partial class SentenceExceptions
{
    /// <summary>Formulas and sources stand with the number that they belong to, as published.</summary>
    private static readonly string[] Citations =
    [
        .. ModelEquations.All.Select(one => one.Source),
        .. ModelEquations.All.Select(one => one.Formula).OfType<string>(),
        .. ModelConstants.All.Select(one => one.Source),
        .. CoefficientCatalogue.All.Select(one => one.Source),
    ];

    public static IReadOnlyDictionary<string, Func<string, SourceText, bool>> All { get; } = new Dictionary<string, Func<string, SourceText, bool>>(StringComparer.Ordinal)
    {
        ["message of an exception, for whoever mends the program"] = (_, text) => IsOfException(text),
        ["line of the operator's log"] = (_, text) => IsLogLine(text),
        ["fault in the operator's configuration, told at the start"] = (file, _) => file == "src/WitherAdvisor.WeatherFeeds/Configuration/FeedOptionsCheck.cs",
        ["SQL"] = (file, text) => file.StartsWith("src/WitherAdvisor.Store.Sqlite/", StringComparison.Ordinal) && IsSql(text),
        ["formula or source of a number"] = (file, text) => IsCitation(file, text),
    };

    private static bool IsOfException(SourceText text) => text.Node.Ancestors().Any(node => node switch
    {
        BaseObjectCreationExpressionSyntax { Parent: ThrowStatementSyntax or ThrowExpressionSyntax } => true,
        ObjectCreationExpressionSyntax made => made.Type.ToString().EndsWith("Exception", StringComparison.Ordinal),
        ConstructorInitializerSyntax { Parent: ConstructorDeclarationSyntax { Parent: ClassDeclarationSyntax made } } =>
            made.Identifier.ValueText.EndsWith("Exception", StringComparison.Ordinal),
        // What a row belongs to, for the message where there is none of that name.
        ArgumentSyntax { NameColon.Name.Identifier.ValueText: "owner" } => true,
        _ => false,
    });

    private static bool IsLogLine(SourceText text) => text.Node.Parent is ArgumentSyntax
    {
        Parent.Parent: InvocationExpressionSyntax { Expression: { } called },
    } && LogCall().IsMatch(called.ToString());

    private static bool IsSql(SourceText text) => SqlWord().IsMatch(text.Spoken) || ColumnList().IsMatch(text.Spoken);

    private static bool IsCitation(string file, SourceText text) =>
        (file.StartsWith("src/WitherAdvisor/Documentation/", StringComparison.Ordinal) || file == "src/WitherAdvisor/Coefficients/CoefficientCatalogue.cs")
        && text.Parts.All(part => Citations.Any(cited => cited.Contains(part, StringComparison.Ordinal)));

    [GeneratedRegex(@"\.Log(Trace|Debug|Information|Warning|Error|Critical)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex LogCall();

    [GeneratedRegex(@"\b(SELECT|INSERT|UPDATE|DELETE|PRAGMA|FROM|JOIN|WHERE|CONFLICT)\b", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex SqlWord();

    [GeneratedRegex(@"^\s*[A-Z]\w*(,\s*[A-Z]\w*)+\s*$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ColumnList();
}

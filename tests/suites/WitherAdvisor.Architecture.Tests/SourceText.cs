using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using SyntaxNode = Microsoft.CodeAnalysis.SyntaxNode;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>A string as it stands in a source: what is written, with what is put into it left out.</summary>
/// <param name="Node">Where it stands.</param>
/// <param name="Parts">The written parts between what is put in; one part where nothing is.</param>
internal sealed record SourceText(ExpressionSyntax Node, IReadOnlyList<string> Parts)
{
    /// <summary>Every string of a source, those within others too.</summary>
    public static IEnumerable<SourceText> In(string source) => CSharpSyntaxTree.ParseText(source).GetRoot()
        .DescendantNodes()
        .Select(Of)
        .OfType<SourceText>();

    /// <summary>As read aloud: what is put in counts as a word.</summary>
    public string Spoken => string.Join("0", Parts);

    public int Words => Spoken.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Count(word => word.Any(char.IsLetterOrDigit));

    private static SourceText? Of(SyntaxNode node) => node switch
    {
        LiteralExpressionSyntax literal when literal.Token.Value is string text => new(literal, [text]),
        InterpolatedStringExpressionSyntax text => new(text, [.. Written(text)]),
        _ => null,
    };

    private static IEnumerable<string> Written(InterpolatedStringExpressionSyntax text)
    {
        string part = "";
        foreach (InterpolatedStringContentSyntax content in text.Contents)
        {
            if (content is InterpolatedStringTextSyntax written)
            {
                part += written.TextToken.ValueText;
                continue;
            }

            yield return part;
            part = "";
        }

        yield return part;
    }
}

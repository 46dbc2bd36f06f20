using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>How long lines and methods of a source are.</summary>
internal static class CodeShape
{
    public const int MostColumns = 160;
    public const int MostMethodLines = 60;
    public const int MostFileLines = 300;

    /// <summary>
    /// Lines, from 1, whose code is too wide. Strings and doc comments are not counted: a sentence that is searched for has
    /// to stand in one piece, and the document of the interface prints doc comments line by line.
    /// </summary>
    public static IEnumerable<int> WideLines(string source)
    {
        SyntaxNode root = CSharpSyntaxTree.ParseText(source).GetRoot();
        int[] text = new int[source.AsSpan().Count('\n') + 1];
        foreach (SyntaxNode node in root.DescendantNodes(node => !IsText(node)).Where(IsText))
        {
            FileLinePositionSpan place = root.SyntaxTree.GetLineSpan(node.Span);
            text[place.StartLinePosition.Line] += place.StartLinePosition.Line == place.EndLinePosition.Line ? node.Span.Length : 0;
        }

        return source.Split('\n').Index()
            .Where(line => !line.Item.TrimStart().StartsWith("///", StringComparison.Ordinal) && line.Item.Length - text[line.Index] > MostColumns)
            .Select(line => line.Index + 1);
    }

    /// <summary>Methods that are too long, each with its lines.</summary>
    public static IEnumerable<(string Name, int Lines)> LongMethods(string source)
    {
        SyntaxNode root = CSharpSyntaxTree.ParseText(source).GetRoot();
        return root.DescendantNodes()
            .Where(node => node is BaseMethodDeclarationSyntax or LocalFunctionStatementSyntax or AccessorDeclarationSyntax)
            .Select(node => (Name: NameOf(node), Lines: LinesOf(node)))
            .Where(method => method.Lines > MostMethodLines);
    }

    private static bool IsText(SyntaxNode node) => node.Kind() is SyntaxKind.StringLiteralExpression or SyntaxKind.InterpolatedStringExpression;

    private static string NameOf(SyntaxNode node) => node switch
    {
        MethodDeclarationSyntax method => method.Identifier.ValueText,
        LocalFunctionStatementSyntax function => function.Identifier.ValueText,
        ConstructorDeclarationSyntax made => made.Identifier.ValueText,
        _ => node.Kind().ToString(),
    };

    private static int LinesOf(SyntaxNode node)
    {
        FileLinePositionSpan place = node.SyntaxTree.GetLineSpan(node.Span);
        return place.EndLinePosition.Line - place.StartLinePosition.Line + 1;
    }
}

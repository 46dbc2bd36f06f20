using System.Text;
using System.Text.RegularExpressions;
using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Tests.Wording;

/// <summary>English with every word written backwards: what shows in it came out of the table, what shows in English did not.</summary>
internal static partial class MadeUpLanguage
{
    public const string Tag = "art-x-backward";

    public static Wordbook Book { get; } = new(Tag, Wordbook.English.Texts.ToDictionary(
        text => text.Key,
        text => text.Key == "language.counting" ? text.Value : Backward(text.Value),
        StringComparer.Ordinal));

    /// <summary>All words of the language, in lower case.</summary>
    public static IReadOnlySet<string> Words { get; } =
        Book.Texts.Values.SelectMany(text => VisibleWords.In(Unseen().Replace(text, " "))).ToHashSet(StringComparer.Ordinal);

    /// <summary>Every run of letters turned round; names of gaps and what stands in tags stay.</summary>
    public static string Backward(string text)
    {
        StringBuilder turned = new();
        for (int at = 0; at < text.Length;)
        {
            int end = text[at] switch
            {
                '{' => text.IndexOfAny(['|', '}'], at),
                '<' => text.IndexOf('>', at) + 1,
                _ when char.IsLetter(text[at]) => at + text[at..].TakeWhile(char.IsLetter).Count(),
                _ => at + 1,
            };
            string piece = text[at..end];
            turned.Append(char.IsLetter(piece[0]) ? string.Concat(piece.Reverse()) : piece);
            at = end;
        }

        return turned.ToString();
    }

    /// <summary>Tags and names of gaps.</summary>
    [GeneratedRegex(@"<[^>]*>|\{[a-z_]+", RegexOptions.NonBacktracking)]
    private static partial Regex Unseen();
}

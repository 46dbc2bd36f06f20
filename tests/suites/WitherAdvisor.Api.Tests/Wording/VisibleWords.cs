using System.Net;
using System.Text.RegularExpressions;

namespace WitherAdvisor.Api.Tests.Wording;

/// <summary>The words that a person sees on a page or hears from a screen reader.</summary>
internal static partial class VisibleWords
{
    /// <summary>Shorter ones are units and signs.</summary>
    private const int FewestLetters = 3;

    private static readonly string[] Spoken = ["title", "aria-label", "placeholder", "alt"];
    private static readonly string[] Void = ["meta", "link", "input", "br", "hr", "img"];

    /// <summary>Elements whose text is for machines, or a person's own file come back.</summary>
    private static readonly string[] Unread = ["style", "script", "code", "textarea"];

    /// <summary>Of a page in one language: what is marked as being in another is left out.</summary>
    public static IEnumerable<string> OfPage(string html)
    {
        string? language = null;
        Stack<(string Name, bool Unread)> open = new();
        foreach (Match piece in Pieces().Matches(html))
        {
            bool unread = open.TryPeek(out var parent) && parent.Unread;
            if (piece.Groups["text"].Success)
            {
                foreach (string word in unread ? [] : In(WebUtility.HtmlDecode(piece.Value)))
                {
                    yield return word;
                }

                continue;
            }

            string name = piece.Groups["name"].Value;
            if (piece.Groups["close"].Value.Length > 0)
            {
                while (open.Pop().Name != name)
                {
                    // A paragraph or list item that the markup does not close.
                }

                continue;
            }

            Dictionary<string, string> attributes = Attributes().Matches(piece.Value)
                .ToDictionary(attribute => attribute.Groups["name"].Value, attribute => WebUtility.HtmlDecode(attribute.Groups["value"].Value), StringComparer.Ordinal);
            string? own = attributes.GetValueOrDefault("lang");
            language ??= own;
            unread |= Unread.Contains(name) || attributes.GetValueOrDefault("translate") == "no" || (own is not null && own != language);
            foreach (string word in unread ? [] : Spoken.SelectMany(spoken => In(attributes.GetValueOrDefault(spoken, ""))))
            {
                yield return word;
            }

            if (!Void.Contains(name) && !piece.Value.EndsWith("/>", StringComparison.Ordinal))
            {
                open.Push((name, unread));
            }
        }
    }

    /// <summary>Runs of letters of a text, in lower case.</summary>
    public static IEnumerable<string> In(string text) =>
        Letters().Matches(text).Where(run => run.Length >= FewestLetters).Select(run => run.Value.ToLowerInvariant());

    [GeneratedRegex(@"<!DOCTYPE[^>]*>|<!--.*?-->|<(?<close>/?)(?<name>[a-zA-Z][a-zA-Z0-9]*)[^>]*>|(?<text>[^<]+)", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Pieces();

    [GeneratedRegex(@"(?<name>[a-z-]+)=""(?<value>[^""]*)""", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Attributes();

    [GeneratedRegex(@"\p{L}+", RegexOptions.NonBacktracking)]
    private static partial Regex Letters();
}

using System.Text.RegularExpressions;
using WitherAdvisor.Tests;

namespace WitherAdvisor.Words.Tests;

/// <summary>The table and the program that reads it: no entry that nobody says, no key that has no entry.</summary>
public sealed partial class KeysInSourceTests
{
    /// <summary>Enumerations of other projects that are named on pages; tests beside them hold their members to the table.</summary>
    private static readonly string[] NamedElsewhere =
        ["coefficient_origin", "identifiability", "kept_rows", "recalibration_status", "row_state", "weather_kind"];

    private static readonly string Source = string.Join('\n', RepositoryFiles.Under("src", "*")
        .Where(file => file.EndsWith(".cs", StringComparison.Ordinal) || file.EndsWith(".razor", StringComparison.Ordinal))
        .Select(file => File.ReadAllText(Path.Combine(RepositoryFiles.Root, file))));

    [Fact]
    public void Every_entry_is_used()
    {
        Assert.Empty(Unused(Wordbook.English.Texts.Keys));
    }

    [Fact]
    public void An_entry_that_nobody_says_is_found() =>
        Assert.Equal(["advice.moonshine"], Unused(["advice.moonshine", "advice.turn", "limit.at_most.reached", "month.3"]));

    [Fact]
    public void Every_key_that_is_said_has_an_entry()
    {
        string[] said = [.. SaidKey().Matches(Source).Select(found => found.Groups["key"].Value).Distinct()];

        Assert.True(said.Length > 300);
        Assert.Empty(said.Except(Wordbook.English.Texts.Keys));
    }

    [Fact]
    public void Entries_with_markup_are_said_as_markup_and_others_as_text()
    {
        HashSet<string> asMarkup = [.. MarkupKey().Matches(Source).Select(found => found.Groups["key"].Value)];
        string[] marked = [.. Wordbook.English.Texts.Where(text => text.Value.Contains('<', StringComparison.Ordinal)).Select(text => text.Key)];

        Assert.Empty(marked.Except(asMarkup));
        Assert.DoesNotContain(marked, key => TextKey().Matches(Source).Any(found => found.Groups["key"].Value == key));
    }

    private static IEnumerable<string> Unused(IEnumerable<string> keys)
    {
        HashSet<string> literal = [.. KeyLiteral().Matches(Source).Select(found => found.Groups["key"].Value), .. SpokenCodes.Keys];
        Regex[] patterns =
        [
            .. KeyPattern().Matches(Source).Select(found => found.Groups["key"].Value).Where(SaysItsGroup).Distinct(StringComparer.Ordinal).Select(AsPattern),
            .. CodeGroups(),
        ];
        return keys.Where(key =>
            !literal.Contains(key) && !NamedElsewhere.Contains(Group(key)) && !patterns.Any(pattern => pattern.IsMatch(key)));
    }

    /// <summary>A text of gaps alone would pass for any key.</summary>
    private static bool SaysItsGroup(string pattern)
    {
        string written = string.Concat(Braces().Split(pattern));
        return written.Contains('.', StringComparison.Ordinal) && written.Any(char.IsAsciiLetter);
    }

    private static string Group(string key) => key[..key.IndexOf('.', StringComparison.Ordinal)];

    private static IEnumerable<Regex> CodeGroups() =>
        CodeGroup().Matches(Source).Select(found => new Regex($@"^{found.Groups["group"].Value}\.", RegexOptions.NonBacktracking));

    /// <summary>A key put together in the program: what stands in braces may be any part of a key.</summary>
    private static Regex AsPattern(string key) =>
        new("^" + string.Join("[a-z0-9_.]+", Braces().Split(key).Select(Regex.Escape)) + "$", RegexOptions.NonBacktracking);

    [GeneratedRegex(@"""(?<key>[a-z0-9_]+(\.[a-z0-9_]+)+)""", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex KeyLiteral();

    [GeneratedRegex(@"\$""(?<key>[a-z0-9_.]*\{[^""{}]*\}[a-z0-9_.]*)""", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex KeyPattern();

    [GeneratedRegex(@"\{[^{}]*\}", RegexOptions.NonBacktracking)]
    private static partial Regex Braces();

    [GeneratedRegex(@"OfCode\(""(?<group>[a-z_]+)""", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex CodeGroup();

    [GeneratedRegex(@"(\b[Ww]ords|\bW)(\[|\.Say\(|\.Html\()""(?<key>[a-z0-9_]+(\.[a-z0-9_]+)+)""", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex SaidKey();

    [GeneratedRegex(@"Html\(\s*""(?<key>[a-z0-9_.]+)""", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex MarkupKey();

    [GeneratedRegex(@"(\[|Say\(\s*)""(?<key>[a-z0-9_.]+)""", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex TextKey();
}

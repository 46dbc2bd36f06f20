using WitherAdvisor.Words;

namespace WitherAdvisor.Api.Pages.Forms;

/// <summary>One of a few.</summary>
/// <param name="Value">What the form sends; empty for "nobody said".</param>
/// <param name="Text">Its name.</param>
/// <param name="Test">What tells it from the others; null where the name says it.</param>
public sealed record Choice(string Value, string Text, string? Test = null)
{
    /// <summary>All members of an enumeration, then one for "nobody said" where that has a name.</summary>
    public static IReadOnlyList<Choice> All<T>(Wordbook words, bool withTests = false, string? unsaid = null)
        where T : struct, Enum =>
        [
            .. Enum.GetValues<T>().Select(value => new Choice(value.ToString(), words.Name(value), withTests ? words.Name(value, "test") : null)),
            .. unsaid is null ? Array.Empty<Choice>() : [new Choice("", unsaid)],
        ];
}

namespace WitherAdvisor.Words;

/// <summary>A sentence for a page.</summary>
/// <param name="Text">In words.</param>
/// <param name="Language">Its tag where it is another than the page's, as of a sentence that was kept; else null.</param>
public sealed record Told(string Text, string? Language)
{
    /// <summary>In the words of the page.</summary>
    public static Told Now(string text) => new(text, null);

    /// <summary>Of a sentence that was kept: what it was made of in the words of the page, where English still says it so.</summary>
    /// <param name="kept">As it was given.</param>
    /// <param name="sentence">It made again; null where it cannot be.</param>
    public static Told Again(Wordbook words, string kept, Func<Wordbook, string?> sentence) =>
        sentence(Wordbook.English) == kept ? Now(sentence(words)!) : Then(words, kept);

    /// <summary>Kept as a sentence, and so in English.</summary>
    public static Told Then(Wordbook words, string text) => new(text, words.Tag == Wordbook.English.Tag ? null : Wordbook.English.Tag);
}

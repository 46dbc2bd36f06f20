using System.Collections.Frozen;

namespace WitherAdvisor.Words;

/// <summary>The words of one language: a sentence for each key, with gaps for what changes.</summary>
/// <remarks>A key or a value that is missing is a fault of ours and throws; tests hold every language to the keys of English.</remarks>
public sealed class Wordbook
{
    private const string CountingKey = "language.counting";

    private readonly FrozenDictionary<string, Pattern> patterns;
    private readonly Counting counting;

    /// <summary>From a language's table.</summary>
    /// <param name="tag">As a browser names the language, "en".</param>
    /// <param name="texts">By key.</param>
    public Wordbook(string tag, IReadOnlyDictionary<string, string> texts)
    {
        Tag = tag;
        Texts = texts;
        patterns = texts.ToFrozenDictionary(text => text.Key, text => Pattern.Of(text.Value), StringComparer.Ordinal);
        counting = new Counting(texts.GetValueOrDefault(CountingKey) ?? throw Missing(CountingKey));
    }

    /// <summary>The language of the interface, of what is kept, and of whoever asks for none that is here.</summary>
    public static Wordbook English { get; } = EmbeddedLanguages.Read("en");

    /// <summary>As a browser names the language, "en".</summary>
    public string Tag { get; }

    /// <summary>The table that it was made from.</summary>
    public IReadOnlyDictionary<string, string> Texts { get; }

    /// <summary>Words without a gap.</summary>
    public string this[string key] => Say(key);

    /// <summary>Words with their gaps filled: texts as they are, whole numbers also as what is counted.</summary>
    public string Say(string key, params ReadOnlySpan<(string Name, object Value)> values) =>
        Find(key).Fill(key, values, counting, text => text);

    /// <summary>The same as markup: tags that the entry holds stay, what fills the gaps is made harmless.</summary>
    public string Html(string key, params ReadOnlySpan<(string Name, object Value)> values) =>
        Find(key).Fill(key, values, counting, System.Net.WebUtility.HtmlEncode);

    /// <summary>What a member of an enumeration is called: its key is "limit_kind.plenum_dry_bulb".</summary>
    public string Name<T>(T member)
        where T : struct, Enum => this[EnumKeys.Of(member)];

    /// <summary>What else is said of a member: the key is its own with a further word behind it, "leaf_standard.fine.test".</summary>
    public string Name<T>(T member, string further)
        where T : struct, Enum => this[$"{EnumKeys.Of(member)}.{further}"];

    /// <summary>Words of a code that the model makes as text; one that has none is shown as it is, without its underscores.</summary>
    public string OfCode(string group, string code) =>
        patterns.ContainsKey($"{group}.{code}") ? this[$"{group}.{code}"] : Codes.Plain(code);

    internal Pattern Find(string key) => patterns.TryGetValue(key, out Pattern? pattern) ? pattern : throw Missing(key);

    private KeyNotFoundException Missing(string key) => new($"The language {Tag} has no words for {key}.");
}

namespace WitherAdvisor.Words;

/// <summary>The languages that the service speaks.</summary>
/// <param name="All">English among them.</param>
public sealed record Wordbooks(IReadOnlyList<Wordbook> All)
{
    /// <summary>Those that stand in Languages.</summary>
    public static Wordbooks Embedded { get; } =
        new([.. EmbeddedLanguages.Tags.Select(tag => tag == Wordbook.English.Tag ? Wordbook.English : EmbeddedLanguages.Read(tag))]);

    /// <summary>The one of this tag, or of its language alone where it names a region too ("ta" for "ta-IN"); null where none is here.</summary>
    public Wordbook? Find(string? tag) => tag is null
        ? null
        : All.FirstOrDefault(book => string.Equals(book.Tag, tag, StringComparison.OrdinalIgnoreCase))
            ?? All.FirstOrDefault(book => tag.StartsWith(book.Tag + "-", StringComparison.OrdinalIgnoreCase));
}

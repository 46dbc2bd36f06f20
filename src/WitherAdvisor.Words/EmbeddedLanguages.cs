using System.Reflection;
using System.Text.Json;

namespace WitherAdvisor.Words;

/// <summary>The tables that stand in Languages: a language is there as soon as its file is.</summary>
internal static class EmbeddedLanguages
{
    private const string Prefix = "language/";

    private static readonly JsonSerializerOptions Strict = new() { AllowDuplicateProperties = false };

    public static IEnumerable<string> Tags => Assembly.GetExecutingAssembly().GetManifestResourceNames()
        .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal))
        .Select(name => name[Prefix.Length..])
        .Order(StringComparer.Ordinal);

    public static Wordbook Read(string tag)
    {
        using Stream file = Assembly.GetExecutingAssembly().GetManifestResourceStream(Prefix + tag)
            ?? throw new KeyNotFoundException($"There is no table of the language {tag}.");
        return new(tag, JsonSerializer.Deserialize<Dictionary<string, string>>(file, Strict)!);
    }
}

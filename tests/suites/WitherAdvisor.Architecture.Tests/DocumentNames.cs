using System.Text.RegularExpressions;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>What a document says is there: links, paths and tests.</summary>
internal static partial class DocumentNames
{
    private static readonly Lazy<Dictionary<string, string>> TestSources = new(() => RepositoryFiles.Under("tests", "*.cs")
        .GroupBy(file => Path.GetFileNameWithoutExtension(file), StringComparer.Ordinal)
        .ToDictionary(files => files.Key, files => string.Concat(files.Select(RepositoryFiles.Read)), StringComparer.Ordinal));

    /// <summary>The documents that lead through the repository, from its root.</summary>
    public static IReadOnlyList<string> Documents { get; } =
    [
        "README.md", "DEVELOPERS.md", "src/GLOSSARY.md", "src/ADDING.md", "tests/DECISIONS.md", "docker/README.md", "fixtures/README.md",
        .. SourceProject.All().Select(project => $"src/{project.Name}/DECISIONS.md"),
        .. Directory.EnumerateDirectories(RepositoryFiles.InRoot("fixtures"))
            .Select(folder => $"fixtures/{Path.GetFileName(folder)}/README.md").Order(StringComparer.Ordinal),
    ];

    /// <summary>What a document names that is not there.</summary>
    public static IEnumerable<string> Missing(string document, string text)
    {
        string prose = Fence().Replace(text, string.Empty);
        string[] quoted = [.. Quoted().Matches(prose).Select(found => found.Groups["said"].Value)];
        return
        [
            .. Links(prose).Where(link => !IsThere(document, link, prose)),
            .. quoted.SelectMany(said => said.Split(' ')).Where(said => IsPath().IsMatch(said) && !Exists(said.TrimEnd('.', ','))),
            .. quoted.Where(said => IsTest().Match(said) is { Success: true } test && !IsTestThere(test)),
        ];
    }

    private static IEnumerable<string> Links(string prose) =>
        Link().Matches(prose).Select(found => found.Groups["to"].Value).Where(to => !to.Contains("://", StringComparison.Ordinal));

    private static bool IsThere(string document, string link, string prose)
    {
        string[] parts = link.Split('#', 2);
        string file = parts[0].Length == 0 ? document : Path.Combine(Path.GetDirectoryName(document)!, parts[0]);
        string text = parts[0].Length == 0 ? prose : ReadIfThere(file);
        return Exists(file) && (parts.Length == 1 || Heading().Matches(text).Any(found => Anchor(found.Groups["title"].Value) == parts[1]));
    }

    private static string ReadIfThere(string file) => File.Exists(InRoot(file)) ? RepositoryFiles.Read(file) : string.Empty;

    private static bool IsTestThere(Match test) =>
        TestSources.Value.TryGetValue(test.Groups["suite"].Value, out string? source)
        && (!test.Groups["name"].Success || source.Contains($" {test.Groups["name"].Value}(", StringComparison.Ordinal));

    private static bool Exists(string path) => File.Exists(InRoot(path)) || Directory.Exists(InRoot(path));

    private static string InRoot(string path) => RepositoryFiles.InRoot(path);

    private static string Anchor(string title) =>
        string.Concat(title.ToLowerInvariant().Where(letter => char.IsLetterOrDigit(letter) || letter is ' ' or '-' or '_')).Replace(' ', '-');

    [GeneratedRegex("^```.*?^```", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Fence();

    [GeneratedRegex(@"`(?<said>[^`\n]+)`", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\]\((?<to>[^)\s]+)\)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Link();

    [GeneratedRegex("^#+ (?<title>.+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^(src|tests|fixtures|openapi|docker|\.ci|\.config)/[\w./-]*$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex IsPath();

    [GeneratedRegex(@"^(?<suite>\w+(Tests|Properties))(\.(?<name>\w+))?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex IsTest();
}

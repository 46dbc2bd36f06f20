using System.Text.Json;

namespace WitherAdvisor.ReferenceChecks.Cases;

/// <summary>Every file of reference cases under fixtures/.</summary>
public static class CaseFiles
{
    private const string Description = "*.checks.json";

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        UnmappedMemberHandling = System.Text.Json.Serialization.JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    };

    public static IReadOnlyList<CaseFile> All { get; } = Read(RepositoryFiles.InRoot("fixtures"));

    /// <summary>Files beside a description that no description names: cases that nobody runs.</summary>
    public static IReadOnlyList<string> WithoutDescription =>
        [.. All.GroupBy(file => file.Folder).SelectMany(folder =>
            Directory.EnumerateFiles(RepositoryFiles.InRoot(folder.Key))
                .Select(path => Path.GetFileName(path)!)
                .Where(name => name.EndsWith(".csv", StringComparison.Ordinal)
                    || (name.EndsWith(".json", StringComparison.Ordinal) && !name.EndsWith(".checks.json", StringComparison.Ordinal)))
                .Except(folder.Select(file => file.Data), StringComparer.Ordinal)
                .Select(name => $"{folder.Key}/{name}"))];

    private static List<CaseFile> Read(string folder) =>
        [.. Directory.EnumerateFiles(folder, Description, SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(ReadOne)];

    private static CaseFile ReadOne(string path)
    {
        CaseFile file = JsonSerializer.Deserialize<CaseFile>(File.ReadAllText(path), Json)
            ?? throw new InvalidDataException($"{path} is empty");
        return file with { Folder = Path.GetRelativePath(RepositoryFiles.Root, Path.GetDirectoryName(path)!).Replace('\\', '/') };
    }
}

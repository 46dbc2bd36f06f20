namespace WitherAdvisor.Testing;

/// <summary>The repository that the tests were built from.</summary>
public static class RepositoryFiles
{
    /// <summary>The folder that holds the solution, looked for upward from where the tests run.</summary>
    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    public static string Read(string file) => File.ReadAllText(InRoot(file));

    /// <summary>A path of the repository, from its root.</summary>
    public static string InRoot(params string[] parts) => Path.Combine([Root, .. parts]);

    /// <summary>Written files under a folder of the repository, relative to its root; what a build makes is left out.</summary>
    public static IEnumerable<string> Under(string folder, string pattern) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), pattern, SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Root, file).Replace('\\', '/'))
            .Where(file => !file.Split('/').Any(part => part is "bin" or "obj"));

    private static string Find(DirectoryInfo? folder)
    {
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WitherAdvisor.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("no WitherAdvisor.sln above the tests");
    }
}

namespace WitherAdvisor.Architecture.Tests;

/// <summary>The sources that the tests were built from.</summary>
internal static class SourceFiles
{
    private static string Root
    {
        get
        {
            DirectoryInfo? folder = new(AppContext.BaseDirectory);
            while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WitherAdvisor.sln")))
            {
                folder = folder.Parent;
            }

            return folder?.FullName ?? throw new InvalidOperationException("no WitherAdvisor.sln above the tests");
        }
    }

    /// <summary>Sources under a folder of the repository, relative to its root; what a build makes is left out.</summary>
    public static IEnumerable<string> Under(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Root, file).Replace('\\', '/'))
            .Where(file => !file.Split('/').Any(part => part is "bin" or "obj"));

    public static string Read(string file) => File.ReadAllText(Path.Combine(Root, file));
}

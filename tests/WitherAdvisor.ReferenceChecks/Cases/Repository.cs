namespace WitherAdvisor.ReferenceChecks.Cases;

/// <summary>The repository that this was built from.</summary>
public static class Repository
{
    public const string Fixtures = "fixtures";

    /// <summary>The folder that holds the solution, looked for upward from where the program lies.</summary>
    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    private static string Find(DirectoryInfo? folder)
    {
        while (folder is not null && !File.Exists(System.IO.Path.Combine(folder.FullName, "WitherAdvisor.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("no WitherAdvisor.sln above the program");
    }
}

namespace WitherAdvisor.Process.Tests;

/// <summary>The browser of the machine; Playwright's own would have to be downloaded.</summary>
public static class InstalledChromium
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome"];

    /// <summary>No sandbox, because containers and root have none; nothing that calls home.</summary>
    public static readonly string[] Arguments =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    public static string Path
    {
        get
        {
            string[] folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator);
            return Names.SelectMany(name => folders.Select(folder => System.IO.Path.Combine(folder, name))).FirstOrDefault(File.Exists)
                ?? throw new InvalidOperationException($"none of {string.Join(", ", Names)} is installed; tests/run installs chromium");
        }
    }
}
